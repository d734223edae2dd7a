#include "making/score_sides.h"

#include <algorithm>
#include <cstdlib>

#include "making/score_choice.h"

namespace creasewright {
namespace {

bool near(Length a, Length b) { return std::abs((a - b).nm()) <= kSameReading; }

bool same(const ScoreReading& s, const ScoreReading& t) { return sameReadings({s}, {t}); }

bool holds(const std::vector<ScoreReading>& readings, const ScoreReading& wanted) {
  return std::ranges::any_of(
      readings, [&](const ScoreReading& r) { return same(r, wanted); });
}

/// One setup for each side that is used, left, right, bottom, top, its readings ascending.
std::vector<ScoreSetup> sideBySide(const std::array<LineView, 2>& views, ToolGrid grid,
                                   Length board) {
  std::vector<SideReadings> scores;
  std::vector<bool> valleys;
  for (const LineView& view : views)
    for (const ScoreLine& line : view.lines) {
      if (!line.full) continue;
      scores.push_back({view.swapped, Length::mm(line.at), Length::mm(view.width - line.at)});
      valleys.push_back(line.valley());
    }
  const std::vector<bool> fromHigh = chooseReadings(scores, grid, board);
  std::vector<ScoreSetup> setups;
  for (const LineView& view : views)
    for (const bool high : {false, true}) {
      ScoreSetup setup{{high ? view.high() : view.low()}, {}};
      for (std::size_t i = 0; i < scores.size(); ++i) {
        if (scores[i].level != view.swapped || fromHigh[i] != high) continue;
        ScoreReading reading;
        reading.at = high ? scores[i].fromHigh : scores[i].fromLow;
        reading.valley = valleys[i];
        setup.readings.push_back(reading);
      }
      std::ranges::sort(setup.readings, {}, &ScoreReading::at);
      if (!setup.readings.empty()) setups.push_back(std::move(setup));
    }
  return setups;
}

/// Both sides of a direction, or all four: what they share is told and turned easily.
bool belongTogether(const std::vector<SheetSide>& sides) {
  using enum SheetSide;
  return sides == std::vector{Left, Right} || sides == std::vector{Bottom, Top} ||
         sides == std::vector{Left, Right, Bottom, Top};
}

/// Takes what two setups share out of both, when telling it for the sides of both costs fewer
/// readings and turns together; or as many, for sides that belong together.
bool share(std::vector<ScoreSetup>& setups, std::size_t i, std::size_t j) {
  ScoreSetup both{setups[i].sides, {}};
  both.sides.insert(both.sides.end(), setups[j].sides.begin(), setups[j].sides.end());
  std::ranges::sort(both.sides);
  std::array<ScoreSetup, 2> rests{setups[i], setups[j]};
  std::ranges::copy_if(rests[0].readings, std::back_inserter(both.readings),
                       [&](const ScoreReading& r) { return holds(rests[1].readings, r); });
  if (both.readings.empty()) return false;
  std::size_t moreTurns = 0;
  for (ScoreSetup& rest : rests) {
    std::erase_if(rest.readings, [&](const ScoreReading& r) { return holds(both.readings, r); });
    if (!rest.readings.empty()) moreTurns += rest.sides.size();
  }
  const std::size_t fewerReadings = both.readings.size();
  if (moreTurns > fewerReadings || (moreTurns == fewerReadings && !belongTogether(both.sides)))
    return false;
  setups.erase(setups.begin() + static_cast<std::ptrdiff_t>(j));
  setups[i] = std::move(both);
  for (ScoreSetup& rest : rests)
    if (!rest.readings.empty()) setups.push_back(std::move(rest));
  return true;
}

/// Shares between any two setups until nothing is left to share; those that are alike first.
std::vector<ScoreSetup> shared(std::vector<ScoreSetup> setups) {
  const auto once = [&setups](bool alike) {
    for (std::size_t i = 0; i < setups.size(); ++i)
      for (std::size_t j = i + 1; j < setups.size(); ++j)
        if ((!alike || sameReadings(setups[i].readings, setups[j].readings)) && share(setups, i, j))
          return true;
    return false;
  };
  while (once(true) || once(false)) {
  }
  return setups;
}

}  // namespace

bool sameReadings(const std::vector<ScoreReading>& a, const std::vector<ScoreReading>& b) {
  return std::ranges::equal(
      a, b,
      [](const ScoreReading& s, const ScoreReading& t) {
        return near(s.at, t.at) && near(s.to, t.to) && s.run == t.run && s.purpose == t.purpose &&
               s.valley == t.valley && s.measuredFrom == t.measuredFrom && s.toLine == t.toLine;
      });
}

std::vector<ScoreSetup> chooseSides(const std::array<LineView, 2>& views, ToolGrid grid,
                                    Length board) {
  std::vector<ScoreSetup> setups = shared(sideBySide(views, grid, board));
  std::ranges::stable_sort(setups, [](const ScoreSetup& a, const ScoreSetup& b) {
    if (a.sides.size() != b.sides.size()) return a.sides.size() > b.sides.size();
    return a.sides < b.sides;
  });
  return setups;
}

}  // namespace creasewright
