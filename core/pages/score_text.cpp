#include "pages/score_text.h"

#include <algorithm>
#include <cstdint>
#include <string>

#include "making/score_curves.h"
#include "making/score_place.h"

namespace creasewright {
namespace {

std::string sideCode(SheetSide side) {
  switch (side) {
    case SheetSide::Left:
      return "left";
    case SheetSide::Right:
      return "right";
    case SheetSide::Bottom:
      return "bottom";
    case SheetSide::Top:
      return "top";
  }
  return {};
}

bool together(const ScoreReading& a, const ScoreReading& b) {
  return a.run == b.run && a.purpose == b.purpose &&
         (a.run == ScoreRun::Full ||
          (a.measuredFrom == b.measuredFrom && a.to == b.to && a.toLine == b.toLine));
}

Label sentence(const std::vector<ScoreReading>& readings) {
  const ScoreReading& first = readings.front();
  const std::string what = first.purpose == ScorePurpose::Fold ? "score" : "mark";
  Label label;
  if (first.run == ScoreRun::Full) {
    label.code = what + "-full";
  } else {
    label.values.emplace_back("corner-" + sideCode(first.measuredFrom));
    if (first.toLine > 0) {
      label.code = what + "-short-line";
      label.values.emplace_back(std::int64_t{first.toLine});
    } else {
      label.code = what + "-short-depth";
      label.values.emplace_back(first.to);
    }
  }
  for (const ScoreReading& reading : readings) label.values.emplace_back(reading.at);
  return label;
}

std::vector<Segment> scoredLines(const std::vector<SheetSide>& sides,
                                 const std::vector<ScoreReading>& readings, double width,
                                 double height) {
  std::vector<Segment> lines;
  for (const SheetSide side : sides)
    for (const ScoreReading& reading : readings)
      lines.push_back(scoredLine(side, reading, width, height));
  return lines;
}

}  // namespace

/// Names every side of a setup; two that lie opposite by the blank's shape.
Label sidesHeading(std::vector<SheetSide> sides, double width, double height) {
  constexpr double kSame = 0.01;  // mm
  std::ranges::sort(sides);
  using enum SheetSide;
  const bool upright = sides == std::vector{Left, Right};
  if (sides.size() == 4) return {"score-all-sides", {}, {}};
  if ((upright || sides == std::vector{Bottom, Top}) && std::abs(width - height) >= kSame)
    return {upright == (width > height) ? "score-short-sides" : "score-long-sides", {}, {}};
  if (sides.size() == 1) return {"score-" + sideCode(sides.front()), {}, {}};
  std::string code = "score";
  for (const SheetSide side : sides) code += '-' + sideCode(side);
  return {code, {}, {}};
}

std::vector<ScoreSection> scoreText(const ScorePlan& plan, double width, double height, Hand hand) {
  std::vector<ScoreSection> sections;
  for (const ScoreSetup& setup : plan.setups) {
    std::vector<std::vector<ScoreReading>> groups;
    for (const ScoreReading& reading : setup.readings) {
      const auto group = std::find_if(groups.begin(), groups.end(), [&](const auto& members) {
        return together(members.front(), reading);
      });
      if (group == groups.end())
        groups.push_back({reading});
      else
        group->push_back(reading);
    }
    ScoreSection section{sidesHeading(setup.sides, width, height), {}, {}};
    for (const auto& group : groups) {
      section.lines.push_back(sentence(group));
      section.places.push_back(scoredLines(setup.sides, group, width, height));
    }
    if (!section.lines.empty()) sections.push_back(std::move(section));
  }
  ScoreSection free;
  const DrawnScores drawn = drawnScores(plan.freeScores);
  if (!drawn.curves.empty()) {
    free.lines.push_back({"score-curves", {static_cast<std::int64_t>(drawn.curves.size())}, {}});
    free.places.emplace_back();
    for (const std::vector<FreeScore>& curve : drawn.curves)
      for (const FreeScore& part : curve) free.places.back().push_back(part.line);
  }
  for (const FreeScore& score : drawn.straight) {
    const Segment& line = score.line;
    const bool left = hand == Hand::Left;
    const auto from = [&](double x) { return Length::mm(left ? width - x : x); };
    free.lines.push_back(
        {left ? "score-free-right" : "score-free",
         {from(line.a.x), Length::mm(line.a.y), from(line.b.x), Length::mm(line.b.y)},
         {}});
    free.places.push_back({line});
  }
  if (!free.lines.empty()) sections.push_back(std::move(free));
  if (sections.empty()) sections.push_back({{}, {{"score-empty", {}, {}}}, {{}}});
  return sections;
}

}  // namespace creasewright
