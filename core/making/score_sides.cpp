#include "making/score_sides.h"

#include <algorithm>
#include <cstdlib>

namespace creasewright {
namespace {

constexpr std::int64_t kSame = 1000;  // nm

bool near(Length a, Length b) { return std::abs((a - b).nm()) <= kSame; }

/// Readings of the same full scores, from the low and from the high side.
struct Choice {
  std::vector<ScoreReading> fromLow;
  std::vector<ScoreReading> fromHigh;
};

ScoreReading fullReading(double at, bool valley) {
  ScoreReading reading;
  reading.at = Length::mm(at);
  reading.valley = valley;
  return reading;
}

/// Takes every full line from the high side where `high` says so.
template <class FromHigh>
Choice choose(const LineView& view, FromHigh high) {
  Choice choice;
  for (const ScoreLine& line : view.lines) {
    if (!line.full) continue;
    if (high(line))
      choice.fromHigh.push_back(fullReading(view.width - line.at, line.valley()));
    else
      choice.fromLow.push_back(fullReading(line.at, line.valley()));
  }
  std::ranges::reverse(choice.fromHigh);
  return choice;
}

int offGrid(const std::vector<ScoreReading>& readings, ToolGrid grid) {
  return static_cast<int>(std::ranges::count_if(
      readings, [&](const ScoreReading& reading) { return !grid.holds(reading.at); }));
}

int offGrid(const Choice& choice, ToolGrid grid) {
  return offGrid(choice.fromLow, grid) + offGrid(choice.fromHigh, grid);
}

int cost(const Choice& choice, ToolGrid grid) {
  constexpr int kOffGrid = 1000;
  const bool mirrored = sameReadings(choice.fromLow, choice.fromHigh);
  const int settings = static_cast<int>(choice.fromLow.size()) +
                       (mirrored ? 0 : static_cast<int>(choice.fromHigh.size()));
  const int turns = choice.fromHigh.empty() ? 0 : 1;
  return kOffGrid * offGrid(choice, grid) + settings + turns;
}

std::vector<ScoreSetup> setupsOf(const Choice& choice, const LineView& view) {
  if (sameReadings(choice.fromLow, choice.fromHigh)) {
    if (choice.fromLow.empty()) return {};
    return {{{view.low(), view.high()}, choice.fromLow}};
  }
  std::vector<ScoreSetup> setups;
  if (!choice.fromLow.empty()) setups.push_back({{view.low()}, choice.fromLow});
  if (!choice.fromHigh.empty()) setups.push_back({{view.high()}, choice.fromHigh});
  return setups;
}

}  // namespace

bool sameReadings(const std::vector<ScoreReading>& a, const std::vector<ScoreReading>& b) {
  return std::ranges::equal(a, b, [](const ScoreReading& s, const ScoreReading& t) {
    return near(s.at, t.at) && near(s.to, t.to) && s.run == t.run && s.purpose == t.purpose &&
           s.valley == t.valley && s.measuredFrom == t.measuredFrom && s.toLine == t.toLine;
  });
}

std::vector<ScoreSetup> chooseSides(const LineView& view, ToolGrid grid, Length board) {
  const double longest = board == Length() ? view.width : board.mm();
  const auto withinBoard = [&](const auto& high) {
    return choose(view, [&](const ScoreLine& line) {
      const bool lowFits = line.at <= longest;
      const bool highFits = view.width - line.at <= longest;
      return lowFits == highFits ? high(line) : highFits;
    });
  };
  const auto onGridFromHigh = [&](const ScoreLine& line) {
    return !grid.holds(Length::mm(line.at)) && grid.holds(Length::mm(view.width - line.at));
  };
  std::vector<Choice> choices{
      withinBoard([](const ScoreLine&) { return false; }),
      withinBoard([](const ScoreLine&) { return true; }),
      withinBoard(onGridFromHigh),
  };
  const Choice pair = choose(view, [&](const ScoreLine& line) { return line.at > view.width / 2; });
  const bool mirrored = sameReadings(pair.fromLow, pair.fromHigh);
  if (mirrored) choices.push_back(pair);

  const Choice best =
      *std::ranges::min_element(choices, {}, [&](const Choice& c) { return cost(c, grid); });
  return setupsOf(mirrored && offGrid(best, grid) > 0 ? pair : best, view);
}

}  // namespace creasewright
