#include "folding/loop_closure.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

constexpr double kClosed = 0.01;  // mm
constexpr int kStepsPerStage = 24;
constexpr int kMostHalvings = 4;

std::size_t slot(int index) { return static_cast<std::size_t>(index); }

/// The share of the way from `a` to `b`, or beyond it.
std::vector<Angle> mixed(const std::vector<Angle>& a, const std::vector<Angle>& b, double share) {
  std::vector<Angle> result = a;
  for (std::size_t i = 0; i < a.size(); ++i)
    result[i] = Angle::degrees(a[i].degrees() * (1 - share) + b[i].degrees() * share);
  return result;
}

}  // namespace

FoldPath::FoldPath(const Net& net) : net_(net), solver_(net) {}

double FoldPath::progressOf(int node) const {
  return 1 - static_cast<double>(node) / (kStepsPerStage * net_.stageCount());
}

/// Whether the way from the node before this one to this one is in a bending stage.
bool FoldPath::bendsAfter(int node) const {
  const int stage = net_.stageCount() - (node - 1) / kStepsPerStage;
  return std::ranges::any_of(net_.bends, [stage](const Bend& b) { return b.stage == stage; });
}

void FoldPath::takeDriven(Angles& angles, double progress) const {
  const Angles driven = foldAngles(net_, progress);
  for (std::size_t i = 0; i < angles.size(); ++i)
    if (!net_.creases[i].loop && net_.creases[i].driven) angles[i] = driven[i];
}

/// `guess` with the driven angles of `progress` and the others closed.
FoldPath::Angles FoldPath::closed(const Angles& guess, double progress) const {
  Angles angles = guess;
  takeDriven(angles, progress);
  solver_.close(angles);
  return angles;
}

/// The closed state from which a bending stage starts.
FoldPath::Angles FoldPath::stageStart(int stage) const {
  const double progress = (stage - 1.0) / net_.stageCount();
  return closed(foldAngles(net_, progress), progress);
}

/// The closed state at `end`, before `from` at `start`, which came before `last`; in smaller steps
/// when one does not close.
FoldPath::Angles FoldPath::stepBack(const Angles& from, const Angles& last, double start,
                                    double end, int halvings) const {
  Angles angles = closed(mixed(last, from, 2), end);
  if (halvings == 0 || solver_.gap(solver_.pose(angles)) <= kClosed) return angles;
  const double middle = (start + end) / 2;
  const Angles half = stepBack(from, mixed(last, from, 0.5), start, middle, halvings - 1);
  return stepBack(half, from, middle, end, halvings - 1);
}

void FoldPath::followBackTo(int node) {
  if (nodes_.empty()) nodes_.push_back(foldAngles(net_, 1));
  while (static_cast<int>(nodes_.size()) <= node) {
    const int next = static_cast<int>(nodes_.size());
    const int inStage = (next - 1) % kStepsPerStage;
    const Angles& from = nodes_.back();
    if (next == kStepsPerStage * net_.stageCount()) {
      nodes_.emplace_back(net_.creases.size());
    } else if (bendsAfter(next)) {
      const Angles start = stageStart(net_.stageCount() - (next - 1) / kStepsPerStage);
      Angles between = mixed(nodes_[slot(next - 1 - inStage)], start,
                             static_cast<double>(inStage + 1) / kStepsPerStage);
      takeDriven(between, progressOf(next));
      nodes_.push_back(std::move(between));
    } else {
      const Angles& last = nodes_[slot(inStage == 0 ? next - 1 : next - 2)];
      nodes_.push_back(stepBack(from, last, progressOf(next - 1), progressOf(next), kMostHalvings));
    }
  }
}

Result<Moment> FoldPath::checked(Angles angles, double progress) const {
  Pose placed = solver_.pose(angles);
  const double stage = progress * net_.stageCount();
  const bool between = std::abs(stage - std::round(stage)) > 1e-9;
  const bool bending = between && std::ranges::any_of(net_.bends, [stage](const Bend& b) {
                         return b.stage == static_cast<int>(std::ceil(stage));
                       });
  const double open = solver_.gap(placed);
  if (open > kClosed && !bending) {
    const Crease& crease = net_.creases[slot(solver_.widestLoop(placed))];
    return Problem{ProblemCode::LoopOpen, net_.panels[slot(crease.child)].id, {Length::mm(open)}};
  }
  solver_.measureLoops(placed, angles);
  return Moment{std::move(angles), std::move(placed)};
}

Moment FoldPath::evenly(double progress) const {
  Angles angles = foldAngles(net_, progress);
  Pose placed = solver_.pose(angles);
  return {std::move(angles), std::move(placed)};
}

Result<Moment> FoldPath::at(double progress) {
  if (!solver_.hasLoops() || net_.stageCount() == 0 || progress <= 0) return evenly(progress);
  if (progress >= 1) return checked(foldAngles(net_, 1), 1);
  const double place = (1 - progress) * kStepsPerStage * net_.stageCount();
  const int after = static_cast<int>(std::floor(place + 1e-9));
  const double share = std::max(0.0, place - after);
  followBackTo(share < 1e-9 ? after : after + 1);
  const auto node = [this](int index) -> const Angles& { return nodes_[slot(index)]; };
  if (share < 1e-9) return checked(node(after), progress);
  Angles guess = mixed(node(after), node(after + 1), share);
  return checked(bendsAfter(after + 1) ? std::move(guess) : closed(guess, progress), progress);
}

Result<std::vector<Angle>> FoldPath::angles(double progress) {
  Result<Moment> found = at(progress);
  if (!found) return found.problem();
  return std::move(found).value().angles;
}

Result<Pose> FoldPath::pose(double progress) {
  Result<Moment> found = at(progress);
  if (!found) return found.problem();
  return std::move(found).value().pose;
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
    const Transform flatChild = flat[slot(crease.parent)].inverse().after(flat[slot(crease.child)]);
    const Transform expected = folded[slot(crease.parent)]
                                   .after(hinge)
                                   .after(Transform::rotationX(crease.angle))
                                   .after(hinge.inverse())
                                   .after(flatChild);
    double open = 0;
    for (const Point& corner : net.panels[slot(crease.child)].outline)
      open = std::max(open,
                      distance(expected.apply(corner), folded[slot(crease.child)].apply(corner)));
    if (open > kClosed)
      problems.push_back(
          {ProblemCode::LoopOpen, net.panels[slot(crease.child)].id, {Length::mm(open)}});
  }
  return problems;
}

}  // namespace creasewright
