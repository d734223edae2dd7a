#include "making/score_plan.h"

#include <algorithm>

#include "making/score_lines.h"
#include "making/score_sides.h"
#include "making/short_scores.h"

namespace creasewright {
namespace {

std::vector<FreeScore> slantedScores(const Net& net, const FlatNet& flat) {
  std::vector<FreeScore> scores;
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Segment& s = flat.creases[i];
    const Segment turned{{s.a.y, s.a.x}, {s.b.y, s.b.x}};
    if (isScored(net.creases[i]) && !isUpright(s) && !isUpright(turned))
      scores.push_back({s, net.creases[i].isValley()});
  }
  return scores;
}

}  // namespace

ScorePlan planScores(const Net& net, const FlatNet& flat, ToolGrid grid, Length board) {
  ScorePlan plan;
  const std::array<LineView, 2> views = lineViews(net, flat);
  const auto& [upright, level] = views;
  plan.setups = chooseSides(views, grid, board);

  // Level short scores start at the left and right side, upright ones at the bottom and top.
  for (ShortScores part : {planShortScores(level, upright.fullPositions(), grid, board),
                           planShortScores(upright, level.fullPositions(), grid, board)}) {
    std::ranges::move(part.setups, std::back_inserter(plan.setups));
    std::ranges::move(part.freeScores, std::back_inserter(plan.freeScores));
  }
  std::ranges::move(slantedScores(net, flat), std::back_inserter(plan.freeScores));
  return plan;
}

}  // namespace creasewright
