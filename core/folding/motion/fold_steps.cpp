#include "folding/motion/fold_steps.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

std::size_t at(int index) { return static_cast<std::size_t>(index); }

/// Adds up what the creases between the root and each panel turn.
void findTwists(const Net& net, FoldStep& step) {
  step.twists.assign(net.panels.size(), {});
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    if (crease.loop) continue;
    const Twist& parent = step.twists[at(crease.parent)];
    Twist& child = step.twists[at(crease.child)];
    child = parent;
    const double turned = (step.end[i].radians() - step.start[i].radians()) / 2;
    if (turned == 0) continue;
    const Transform& frame = step.pose[at(crease.child)];
    const Point3 turn = frame.turn({1, 0, 0}) * turned;
    child.turn = child.turn + turn;
    child.shift = child.shift + cross(frame.apply(Point{0, 0}), turn);
  }
}

void findTurns(FoldStep& step) {
  const std::size_t count = step.start.size();
  step.turns.resize(count);
  step.uneven.resize(count);
  for (std::size_t i = 0; i < count; ++i) {
    const double start = step.start[i].radians();
    const double middle = step.middle[i].radians();
    const double end = step.end[i].radians();
    step.turns[i] = std::max(std::abs(middle - start), std::abs(end - middle));
    step.uneven[i] = std::abs(start + end - 2 * middle);
    if (step.uneven[i] < 1e-12) step.uneven[i] = 0;
  }
}

}  // namespace

const PlacedShape& FoldStep::place(const std::vector<ConvexShape>& shapes, std::size_t index) {
  if (placed.empty()) placed.resize(shapes.size());
  std::optional<PlacedShape>& found = placed[index];
  if (!found) found.emplace(shapes[index], pose[at(shapes[index].panel)]);
  return *found;
}

std::optional<std::vector<Angle>> FoldSteps::anglesAt(double progress) {
  Result<std::vector<Angle>> angles = path_.angles(progress);
  if (angles) return *angles;
  problem_ = angles.problem();
  return std::nullopt;
}

std::optional<Pose> FoldSteps::poseAt(double progress) {
  const auto angles = anglesAt(progress);
  if (!angles) return std::nullopt;
  return pose(net_, *angles);
}

std::unique_ptr<FoldStep> FoldSteps::step(double from, double to, const std::vector<Angle>& start,
                                          const std::vector<Angle>& end) {
  auto middle = anglesAt((from + to) / 2);
  if (!middle) return nullptr;
  auto made = std::make_unique<FoldStep>();
  made->from = from;
  made->to = to;
  made->start = start;
  made->middle = std::move(*middle);
  made->end = end;
  made->pose = pose(net_, made->middle);
  findTwists(net_, *made);
  findTurns(*made);
  return made;
}

FoldStep* FoldSteps::stage(int stage) {
  const double count = net_.stageCount();
  const double from = (stage - 1) / count;
  const double to = stage / count;
  const auto start = anglesAt(from);
  const auto end = anglesAt(to);
  stage_ = start && end ? step(from, to, *start, *end) : nullptr;
  return stage_.get();
}

bool FoldSteps::halve(FoldStep& whole) {
  if (whole.firstHalf) return true;
  const double middle = (whole.from + whole.to) / 2;
  whole.firstHalf = step(whole.from, middle, whole.start, whole.middle);
  if (whole.firstHalf) whole.secondHalf = step(middle, whole.to, whole.middle, whole.end);
  if (whole.secondHalf) return true;
  whole.firstHalf.reset();
  return false;
}

}  // namespace creasewright
