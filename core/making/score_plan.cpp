#include "making/score_plan.h"

#include <algorithm>

#include "making/score_lines.h"
#include "making/score_sides.h"
#include "making/short_scores.h"

namespace creasewright {
namespace {

/// Adds setups, joining those that set the board alike: turn the sheet and repeat.
void addFull(std::vector<ScoreSetup>& plan, const std::vector<ScoreSetup>& more) {
  for (const ScoreSetup& setup : more) {
    const auto same = std::ranges::find_if(plan, [&](const ScoreSetup& other) {
      return sameReadings(other.readings, setup.readings);
    });
    if (same == plan.end())
      plan.push_back(setup);
    else
      same->sides.insert(same->sides.end(), setup.sides.begin(), setup.sides.end());
  }
}

std::vector<FreeScore> slantedScores(const Net& net, const FlatNet& flat) {
  std::vector<FreeScore> scores;
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Segment& s = flat.creases[i];
    const Segment turned{{s.a.y, s.a.x}, {s.b.y, s.b.x}};
    if (isScored(net.creases[i]) && !isUpright(s) && !isUpright(turned))
      scores.push_back({s, net.creases[i].angle.degrees() >= 0});
  }
  return scores;
}

}  // namespace

ScorePlan planScores(const Net& net, const FlatNet& flat, ToolGrid grid, Length board) {
  ScorePlan plan;
  const auto [upright, level] = lineViews(net, flat);
  addFull(plan.setups, chooseSides(upright, grid, board));
  addFull(plan.setups, chooseSides(level, grid, board));
  std::ranges::stable_sort(plan.setups, std::ranges::greater{},
                           [](const ScoreSetup& setup) { return setup.sides.size(); });

  // Level short scores start at the left and right side, upright ones at the bottom and top.
  for (ShortScores part : {planShortScores(level, upright.fullPositions(), grid),
                           planShortScores(upright, level.fullPositions(), grid)}) {
    std::ranges::move(part.setups, std::back_inserter(plan.setups));
    std::ranges::move(part.freeScores, std::back_inserter(plan.freeScores));
  }
  std::ranges::move(slantedScores(net, flat), std::back_inserter(plan.freeScores));
  return plan;
}

}  // namespace creasewright
