#include "folding/motion/pair_motion.h"

#include <algorithm>

#include "folding/motion/crease_path.h"

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

/// By crease of a path that ends at `last`: how far the last panel's corners can be from it. Each
/// crease adds its distance from the next one, which no folding changes.
std::vector<double> reaches(const Net& net, const std::vector<int>& path, int last) {
  std::vector<double> result(path.size());
  int panel = last;
  for (std::size_t i = path.size(); i-- > 0;) {
    const Crease& crease = net.creases[static_cast<std::size_t>(path[i])];
    const Point here = middleIn(crease, panel);
    if (i + 1 == path.size()) {
      result[i] = farthestCorner(net.panels[static_cast<std::size_t>(panel)], here);
    } else {
      const Crease& next = net.creases[static_cast<std::size_t>(path[i + 1])];
      result[i] = result[i + 1] + distance(here, middleIn(next, panel));
    }
    panel = crease.parent == panel ? crease.child : crease.parent;
  }
  return result;
}

}  // namespace

PairMotion::PairMotion(const Net& net, int a, int b)
    : a_(static_cast<std::size_t>(a)), b_(static_cast<std::size_t>(b)) {
  std::vector<int> path = creasePath(net, a, b);
  const std::vector<double> toB = reaches(net, path, b);
  std::vector<int> back(path.rbegin(), path.rend());
  const std::vector<double> toA = reaches(net, back, a);
  for (std::size_t i = 0; i < path.size(); ++i)
    hinges_.push_back({static_cast<std::size_t>(path[i]), toA[path.size() - 1 - i], toB[i]});
}

bool PairMotion::movesIn(const FoldStep& step) const {
  return std::ranges::any_of(hinges_, [&](const Hinge& hinge) {
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
