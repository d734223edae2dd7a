#include "folding/motion/pair_motion.h"

#include <algorithm>

namespace creasewright {
namespace {

Point middleOf(const Segment& s) { return (s.a + s.b) / 2; }

/// Middle of a crease in the frame of its parent or of its child.
Point middleIn(const Crease& crease, int panel) {
  if (panel == crease.parent) return middleOf(crease.onParent);
  return {length(crease.onParent) / 2, 0};
}

double farthestCorner(const Panel& panel, Point from) {
  double farthest = 0;
  for (const Point& corner : panel.outline) farthest = std::max(farthest, distance(from, corner));
  return farthest;
}

/// One after the other from `first` to `last`: the panels that a path of creases goes through.
std::vector<int> panelsAlong(const Net& net, const std::vector<int>& path, int first) {
  std::vector<int> panels{first};
  for (const int index : path) {
    const Crease& crease = net.creases[static_cast<std::size_t>(index)];
    panels.push_back(crease.parent == panels.back() ? crease.child : crease.parent);
  }
  return panels;
}

}  // namespace

/// How far the corners of a panel can be from a crease of the path: each crease in between adds its
/// distance from the next one, which no folding changes.
PairMotion::PairMotion(const Net& net, const CreaseTree& tree, int a, int b)
    : a_(static_cast<std::size_t>(a)), b_(static_cast<std::size_t>(b)) {
  const std::vector<int> path = tree.path(a, b);
  const std::size_t count = path.size();
  if (count == 0) return;
  const auto crease = [&](std::size_t i) -> const Crease& {
    return net.creases[static_cast<std::size_t>(path[i])];
  };
  const std::vector<int> panels = panelsAlong(net, path, a);
  for (const int index : path) hinges_.push_back({static_cast<std::size_t>(index), 0, 0});
  std::vector<double> gaps;  // between one crease and the next
  for (std::size_t i = 0; i + 1 < count; ++i)
    gaps.push_back(
        distance(middleIn(crease(i), panels[i + 1]), middleIn(crease(i + 1), panels[i + 1])));
  hinges_.front().reachA = farthestCorner(net.panels[a_], middleIn(crease(0), a));
  hinges_.back().reachB = farthestCorner(net.panels[b_], middleIn(crease(count - 1), b));
  for (std::size_t i = 1; i < count; ++i) {
    hinges_[i].reachA = hinges_[i - 1].reachA + gaps[i - 1];
    hinges_[count - 1 - i].reachB = hinges_[count - i].reachB + gaps[count - 1 - i];
  }
}

bool PairMotion::movesIn(const FoldStep& step) const {
  return std::ranges::any_of(
      hinges_,
      [&](const Hinge& hinge) {
        return step.turns[hinge.crease] > 0 || step.uneven[hinge.crease] > 0;
      });
}

/// Taylor's remainder: the second derivative by two hinges is at most the reach from the one nearer
/// to the moving panel.
double PairMotion::stray(const FoldStep& step, bool ofB) const {
  double sum = 0;
  double before = 0;  // turns of the hinges nearer to the panel at rest
  const std::size_t count = hinges_.size();
  for (std::size_t i = 0; i < count; ++i) {
    const Hinge& hinge = hinges_[ofB ? i : count - 1 - i];
    const double reach = ofB ? hinge.reachB : hinge.reachA;
    const double turn = step.turns[hinge.crease];
    sum += reach * (turn * (turn + 2 * before) / 2 + step.uneven[hinge.crease]);
    before += turn;
  }
  return sum;
}

RelativeMotion PairMotion::during(const FoldStep& step) const {
  return {step.twists[b_] - step.twists[a_], stray(step, false), stray(step, true)};
}

double PairMotion::mostOfA(const FoldStep& step) const {
  double most = 0;
  for (const Hinge& hinge : hinges_) most += step.turns[hinge.crease] * hinge.reachA;
  return most;
}

double PairMotion::most(const FoldStep& step) const {
  double b = 0;
  for (const Hinge& hinge : hinges_) b += step.turns[hinge.crease] * hinge.reachB;
  return std::min(mostOfA(step), b);
}

}  // namespace creasewright
