#include "pages/score_strips.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "pages/part_sheet.h"

namespace creasewright {
namespace {

constexpr double kAlike = 0.01;  // mm

SheetSide sideOf(Point out) {
  if (std::abs(out.x) > std::abs(out.y)) return out.x < 0 ? SheetSide::Left : SheetSide::Right;
  return out.y < 0 ? SheetSide::Bottom : SheetSide::Top;
}

/// mm from the left end of a side, when the sheet is turned so that the side lies to the maker.
double fromLeftEnd(SheetSide side, Point p, double width, double height) {
  switch (side) {
    case SheetSide::Bottom:
      return p.x;
    case SheetSide::Right:
      return p.y;
    case SheetSide::Top:
      return width - p.x;
    case SheetSide::Left:
      return height - p.y;
  }
  return 0;
}

/// The side at the right end of one that lies to the maker.
SheetSide rightOf(SheetSide side) {
  switch (side) {
    case SheetSide::Bottom:
      return SheetSide::Right;
    case SheetSide::Right:
      return SheetSide::Top;
    case SheetSide::Top:
      return SheetSide::Left;
    case SheetSide::Left:
      return SheetSide::Bottom;
  }
  return side;
}

/// Where the ticks are alike, so are the numbers, told from one of the ends.
bool alike(const StripTick& a, const StripTick& b) {
  const ScoreReading& p = a.reading;
  const ScoreReading& q = b.reading;
  return std::abs(a.at - b.at) < kAlike && p.run == q.run && p.purpose == q.purpose &&
         p.valley == q.valley &&
         (p.run == ScoreRun::Full || (p.to == q.to && p.toLine == q.toLine));
}

bool alikeStrips(const ScoreStrip& a, const ScoreStrip& b) {
  return std::abs(a.length - b.length) < kAlike &&
         std::ranges::equal(
             a.ticks, b.ticks, [](const StripTick& x, const StripTick& y) { return alike(x, y); });
}

}  // namespace

std::vector<ScoreStrip> scoreStrips(const ScorePlan& plan, double width, double height) {
  using enum SheetSide;
  const std::vector<EdgeReading> readings = edgeReadings(plan, width, height);
  std::vector<ScoreStrip> strips;
  for (const SheetSide side : {Bottom, Right, Top, Left}) {
    ScoreStrip strip{{side}, side == Bottom || side == Top ? width : height, {}};
    for (const EdgeReading& each : readings) {
      if (sideOf(each.out) != side) continue;
      const double at = fromLeftEnd(side, each.at, width, height);
      const bool there = std::ranges::any_of(
          strip.ticks, [at](const StripTick& tick) { return std::abs(tick.at - at) < kAlike; });
      if (!there) strip.ticks.push_back({at, each.reading, each.measured == rightOf(side)});
    }
    if (strip.ticks.empty()) continue;
    std::ranges::sort(strip.ticks, {}, &StripTick::at);
    const auto same = std::ranges::find_if(
        strips, [&](const ScoreStrip& other) { return alikeStrips(strip, other); });
    if (same == strips.end())
      strips.push_back(std::move(strip));
    else
      same->sides.push_back(side);
  }
  return strips;
}

std::vector<double> stripJoints(const ScoreStrip& strip, double longest) {
  constexpr double kClear = 5;  // mm from a tick and its number
  constexpr double kStep = 0.5;
  const auto isClear = [&](double place) {
    return std::ranges::none_of(
        strip.ticks, [place](const StripTick& tick) { return std::abs(tick.at - place) < kClear; });
  };
  std::vector<double> joints;
  double from = 0;
  while (strip.length - from > longest) {
    // Parts of about one length, so that none is too short for its title.
    const double left = strip.length - from;
    const double aim = from + left / std::ceil(left / longest);
    double joint = from + longest;
    for (double away = 0; away < longest / 2; away += kStep) {
      const auto fits = [&](double place) {
        return place <= from + longest && place > from && isClear(place);
      };
      if (fits(aim + away))
        joint = aim + away;
      else if (fits(aim - away))
        joint = aim - away;
      else
        continue;
      break;
    }
    joints.push_back(joint);
    from = joint;
  }
  return joints;
}

}  // namespace creasewright
