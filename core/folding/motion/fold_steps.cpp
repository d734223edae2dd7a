#include "folding/motion/fold_steps.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

std::size_t slot(int index) { return static_cast<std::size_t>(index); }

/// Adds up what the creases between the root and each panel turn.
void findTwists(const Net& net, FoldStep& step) {
  step.twists.assign(net.panels.size(), {});
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    if (crease.loop) continue;
    const Twist& parent = step.twists[slot(crease.parent)];
    Twist& child = step.twists[slot(crease.child)];
    child = parent;
    const double turned = ((*step.end)[i].radians() - (*step.start)[i].radians()) / 2;
    if (turned == 0) continue;
    const Transform& frame = step.pose[slot(crease.child)];
    const Point3 turn = frame.turn({1, 0, 0}) * turned;
    child.turn = child.turn + turn;
    child.shift = child.shift + cross(frame.apply(Point{0, 0}), turn);
  }
}

void findTurns(FoldStep& step) {
  const std::size_t count = step.middle.size();
  step.turns.resize(count);
  step.uneven.resize(count);
  for (std::size_t i = 0; i < count; ++i) {
    const double start = (*step.start)[i].radians();
    const double middle = step.middle[i].radians();
    const double end = (*step.end)[i].radians();
    step.turns[i] = std::max(std::abs(middle - start), std::abs(end - middle));
    step.uneven[i] = std::abs(start + end - 2 * middle);
    if (step.uneven[i] < 1e-12) step.uneven[i] = 0;
  }
}

}  // namespace

const PlacedShape& FoldStep::place(const std::vector<ConvexShape>& shapes, std::size_t index) {
  if (placed.empty()) placed.resize(shapes.size());
  std::optional<PlacedShape>& found = placed[index];
  if (!found) found.emplace(shapes[index], pose[slot(shapes[index].panel)]);
  return *found;
}

std::optional<Moment> FoldSteps::at(double progress) {
  Result<Moment> moment = path_.at(progress);
  if (moment) return std::move(moment).value();
  problem_ = moment.problem();
  return std::nullopt;
}

std::unique_ptr<FoldStep> FoldSteps::step(double from, double to, const std::vector<Angle>& start,
                                          const std::vector<Angle>& end) {
  std::optional<Moment> middle = at((from + to) / 2);
  if (!middle) return nullptr;
  auto made = std::make_unique<FoldStep>();
  made->from = from;
  made->to = to;
  made->start = &start;
  made->end = &end;
  made->middle = std::move(middle->angles);
  made->pose = std::move(middle->pose);
  findTwists(net_, *made);
  findTurns(*made);
  return made;
}

FoldStep* FoldSteps::stage(int stage) {
  const double count = net_.stageCount();
  const double from = (stage - 1) / count;
  const double to = stage / count;
  std::optional<Moment> start = at(from);
  std::optional<Moment> end = at(to);
  stage_.reset();
  if (!start || !end) return nullptr;
  stageStart_ = std::move(*start);
  stageEnd_ = std::move(*end);
  stage_ = step(from, to, stageStart_.angles, stageEnd_.angles);
  return stage_.get();
}

bool FoldSteps::halve(FoldStep& whole) {
  if (whole.firstHalf) return true;
  const double middle = (whole.from + whole.to) / 2;
  whole.firstHalf = step(whole.from, middle, *whole.start, whole.middle);
  if (whole.firstHalf) whole.secondHalf = step(middle, whole.to, whole.middle, *whole.end);
  if (whole.secondHalf) return true;
  whole.firstHalf.reset();
  return false;
}

}  // namespace creasewright
