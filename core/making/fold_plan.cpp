#include "making/fold_plan.h"

#include <algorithm>
#include <cmath>

#include "making/score_lines.h"
#include "net/pose.h"

namespace creasewright {
namespace {

std::vector<int> stagesToRoot(const Net& net, int panel, std::vector<int>& panels) {
  std::vector<int> stages;
  panels = {panel};
  for (const Crease* crease = net.creaseOf(panel); crease != nullptr;
       crease = net.creaseOf(crease->parent)) {
    stages.push_back(crease->moves() ? crease->stage : 1);
    panels.push_back(crease->parent);
  }
  return stages;
}

/// The last stage on the way through the card from the flap to its target.
int closingStage(const Net& net, const Mate& mate) {
  if (mate.stage > 0) return mate.stage;
  std::vector<int> flapPanels;
  std::vector<int> targetPanels;
  const std::vector<int> flap = stagesToRoot(net, mate.panel, flapPanels);
  const std::vector<int> target = stagesToRoot(net, mate.onto, targetPanels);
  std::size_t shared = 0;
  while (shared < flap.size() && shared < target.size() &&
         flapPanels[flapPanels.size() - 2 - shared] ==
             targetPanels[targetPanels.size() - 2 - shared])
    ++shared;
  int last = 1;
  for (std::size_t i = 0; i + shared < flap.size(); ++i) last = std::max(last, flap[i]);
  for (std::size_t i = 0; i + shared < target.size(); ++i) last = std::max(last, target[i]);
  return last;
}

Fold foldAt(const Net& net, const FlatNet& flat, std::size_t index) {
  const Crease& crease = net.creases[index];
  Fold fold;
  fold.line = flat.creases[index];
  fold.crease = static_cast<int>(index);
  fold.parent = crease.parent;
  fold.child = crease.child;
  fold.angle = crease.angle;
  fold.bend = !isScored(crease);
  fold.valley = crease.isValley();
  fold.loop = crease.loop;
  return fold;
}

}  // namespace

FoldPlan planFolds(const Net& net, const FlatNet& flat) {
  FoldPlan plan;
  for (const std::string& code : net.stages) plan.stages.push_back({code, {}, {}, {}});
  const auto stage = [&plan](int number) -> FoldStage& {
    return plan.stages[static_cast<std::size_t>(number - 1)];
  };
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Fold fold = foldAt(net, flat, i);
    if (!fold.bend) plan.burnish.push_back(fold);
    for (int k = 1; k <= net.stageCount(); ++k) {
      const Angle before = angleAfter(net.creases[i], k - 1);
      const Angle after = angleAfter(net.creases[i], k);
      if (after == before) continue;
      stage(k).folds.push_back(fold);
      stage(k).folds.back().angle = after;
      stage(k).folds.back().opens = std::abs(after.degrees()) < std::abs(before.degrees());
    }
  }
  for (std::size_t i = 0; i < net.mates.size() && !plan.stages.empty(); ++i)
    stage(closingStage(net, net.mates[i])).mates.push_back(static_cast<int>(i));
  for (const Bend& bend : net.bends) stage(bend.stage).bends.push_back(bend.why);
  return plan;
}

}  // namespace creasewright
