#include "folding/loop_closure.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

constexpr double kClosed = 0.01;  // mm
constexpr int kStepsPerStage = 24;
constexpr int kMostHalvings = 4;

std::size_t at(int index) { return static_cast<std::size_t>(index); }

}  // namespace

FoldPath::FoldPath(const Net& net) : net_(net), solver_(net) {
  nodes_.push_back({std::vector<Angle>(net.creases.size()), 0});
}

bool FoldPath::bends(int stage) const {
  return std::ranges::any_of(net_.bends, [stage](const Bend& b) { return b.stage == stage; });
}

/// Driven angles at `end`; those of this stage that are not driven go on evenly towards their final
/// angle, the others stay.
FoldPath::Step FoldPath::guess(const Step& from, double start, double end, double stageEnd) const {
  const int stage = static_cast<int>(std::lround(stageEnd * net_.stageCount()));
  const double share = stageEnd - start > 1e-12 ? (end - start) / (stageEnd - start) : 1;
  const std::vector<Angle> driven = foldAngles(net_, end);
  Step step = from;
  for (std::size_t i = 0; i < net_.creases.size(); ++i) {
    const Crease& crease = net_.creases[i];
    const double now = from.angles[i].degrees();
    if (!crease.loop && crease.driven) {
      step.angles[i] = driven[i];
    } else if (crease.stage == stage) {
      step.angles[i] = Angle::degrees(now + (crease.angle.degrees() - now) * share);
    }
  }
  return step;
}

/// Closes the loops at `end`, starting from a closed state at `start`; halves the step when that
/// fails.
FoldPath::Step FoldPath::stepTo(const Step& from, double start, double end, double stageEnd,
                                int halvings) const {
  Step step = guess(from, start, end, stageEnd);
  step.open = solver_.close(step.angles);
  if (step.open <= kClosed || halvings == 0) return step;
  const double middle = (start + end) / 2;
  const Step half = stepTo(from, start, middle, stageEnd, halvings - 1);
  if (half.open > kClosed) return step;
  return stepTo(half, middle, end, stageEnd, halvings - 1);
}

/// The closed state at the end of a bending stage, or a state evenly on the way there.
FoldPath::Step FoldPath::bent(const Step& from, double start, double end) const {
  const double stages = net_.stageCount();
  const double stageStart = std::floor(start * stages + 1e-9) / stages;
  const double stageEnd = stageStart + 1 / stages;
  Step last = guess(from, stageStart, stageEnd, stageEnd);
  last.open = solver_.close(last.angles);
  const double share = std::clamp((end - stageStart) * stages, 0.0, 1.0);
  if (share >= 1 - 1e-12) return last;
  Step step = from;
  for (std::size_t i = 0; i < step.angles.size(); ++i)
    step.angles[i] =
        Angle::degrees(from.angles[i].degrees() * (1 - share) + last.angles[i].degrees() * share);
  step.open = 0;
  return step;
}

void FoldPath::followTo(std::size_t node) {
  const double count = static_cast<double>(kStepsPerStage) * net_.stageCount();
  while (nodes_.size() <= node) {
    const std::size_t next = nodes_.size();
    const std::size_t inStage = (next - 1) % kStepsPerStage;
    const int stage = static_cast<int>((next - 1) / kStepsPerStage) + 1;
    const double start = static_cast<double>(next - 1) / count;
    const double end = static_cast<double>(next) / count;
    const double stageEnd = static_cast<double>(stage) / net_.stageCount();
    nodes_.push_back(bends(stage)
                         ? bent(nodes_[next - 1 - inStage], (stage - 1.0) / net_.stageCount(), end)
                         : stepTo(nodes_.back(), start, end, stageEnd, kMostHalvings));
  }
}

Result<std::vector<Angle>> FoldPath::checked(const Step& step, double progress) const {
  std::vector<Angle> angles = step.angles;
  const Pose placed = creasewright::pose(net_, angles);
  const int stage = static_cast<int>(std::ceil(progress * net_.stageCount() - 1e-9));
  const bool between = std::abs(progress * net_.stageCount() - stage) > 1e-9;
  const double open = solver_.gap(placed);
  if (open > kClosed && !(between && bends(stage))) {
    const Crease& crease = net_.creases[at(solver_.widestLoop(placed))];
    return Problem{ProblemCode::LoopOpen, net_.panels[at(crease.child)].id, {Length::mm(open)}};
  }
  solver_.measureLoops(placed, angles);
  return angles;
}

Result<std::vector<Angle>> FoldPath::angles(double progress) {
  if (!solver_.hasLoops() || net_.stageCount() == 0 || progress <= 0)
    return foldAngles(net_, progress);
  if (progress >= 1) return checked({foldAngles(net_, 1), 0}, 1);
  const double count = static_cast<double>(kStepsPerStage) * net_.stageCount();
  const double place = progress * count;
  const double floor = std::floor(place + 1e-9);
  const auto node = static_cast<std::size_t>(floor);
  followTo(node);
  if (place - floor < 1e-9) return checked(nodes_[node], progress);
  const int stage = static_cast<int>(node / kStepsPerStage) + 1;
  const double stageEnd = static_cast<double>(stage) / net_.stageCount();
  if (bends(stage)) {
    const std::size_t first = node - node % kStepsPerStage;
    return checked(bent(nodes_[first], (stage - 1.0) / net_.stageCount(), progress), progress);
  }
  return checked(stepTo(nodes_[node], floor / count, progress, stageEnd, kMostHalvings), progress);
}

Result<Pose> FoldPath::pose(double progress) {
  Result<std::vector<Angle>> found = angles(progress);
  if (!found) return found.problem();
  return creasewright::pose(net_, *found);
}

Pose foldedPose(const Net& net, double progress) {
  if (std::ranges::any_of(net.creases, &Crease::loop)) {
    const Result<Pose> found = FoldPath(net).pose(progress);
    if (found) return *found;
  }
  return pose(net, progress);
}

Problems checkLoops(const Net& net, const Pose& folded) {
  Problems problems;
  Pose flat;
  for (const Crease& crease : net.creases) {
    if (!crease.loop) continue;
    if (flat.empty()) flat = pose(net, std::vector<Angle>(net.creases.size()));
    const Transform hinge = hingeFrame(crease.onParent);
    const Transform flatChild = flat[at(crease.parent)].inverse().after(flat[at(crease.child)]);
    const Transform expected = folded[at(crease.parent)]
                                   .after(hinge)
                                   .after(Transform::rotationX(crease.angle))
                                   .after(hinge.inverse())
                                   .after(flatChild);
    double open = 0;
    for (const Point& corner : net.panels[at(crease.child)].outline)
      open =
          std::max(open, distance(expected.apply(corner), folded[at(crease.child)].apply(corner)));
    if (open > kClosed)
      problems.push_back(
          {ProblemCode::LoopOpen, net.panels[at(crease.child)].id, {Length::mm(open)}});
  }
  return problems;
}

}  // namespace creasewright
