#include "guide/fold_steps.h"

#include <algorithm>

#include "net/whole_panels.h"

namespace creasewright {
namespace {

/// The strips of a bent panel meet what they meet as one panel.
void addJoins(const Net& net, const FoldStage& stage, Step& step) {
  const std::vector<int> whole = wholePanels(net);
  const auto wholeOf = [&whole](int panel) { return whole[static_cast<std::size_t>(panel)]; };
  for (const int index : stage.mates) {
    const Mate& mate = net.mates[static_cast<std::size_t>(index)];
    const bool told = std::ranges::any_of(step.joins, [&](const Join& join) {
      return wholeOf(join.panel) == wholeOf(mate.panel) &&
             wholeOf(join.onto) == wholeOf(mate.onto) && join.face == mate.face &&
             join.method == mate.method && mate.method == Method::Rest;
    });
    if (told) continue;
    step.joins.push_back({index, mate.panel, mate.onto, mate.face, mate.method});
    CheckLine check;
    check.code = mate.rim ? CheckCode::CreaseOnRim : CheckCode::FlapFaceDown;
    check.panel = mate.panel;
    check.onto = mate.onto;
    check.face = mate.face;
    step.checks.push_back(check);
  }
}

}  // namespace

std::vector<Step> foldSteps(const PiecePlans& plans) {
  const Net& net = plans.built.net;
  const auto count = static_cast<double>(plans.folds.stages.size());
  std::vector<Step> steps;
  for (std::size_t i = 0; i < plans.folds.stages.size(); ++i) {
    const FoldStage& stage = plans.folds.stages[i];
    if (stage.folds.empty() && stage.mates.empty()) continue;
    Step step;
    step.code = StepCode::FoldStage;
    step.piece = plans.index;
    step.stage = stage.code;
    step.folds = stage.folds;
    step.bends = stage.bends;
    addJoins(net, stage, step);
    step.figure.kind = FigureKind::Folded;
    step.figure.arrows = true;
    step.figure.progressFrom = static_cast<double>(i) / count;
    step.figure.progress = static_cast<double>(i + 1) / count;
    step.stages = {{stage.code, stage.folds, step.figure.progressFrom, step.figure.progress}};
    for (const Fold& fold : stage.folds)
      if (!fold.loop) step.figure.panels.push_back(fold.child);
    steps.push_back(std::move(step));
  }
  return steps;
}

}  // namespace creasewright
