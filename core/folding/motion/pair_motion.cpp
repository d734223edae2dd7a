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

std::size_t at(int index) { return static_cast<std::size_t>(index); }

}  // namespace

CreaseSpans::CreaseSpans(const Net& net)
    : net_(&net), spans_(net.creases.size()), places_(net.panels.size(), -1) {
  for (std::size_t i = 0; i < net.creases.size(); ++i)
    if (!net.creases[i].loop) places_[at(net.creases[i].child)] = static_cast<int>(i);
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    if (crease.loop) continue;
    Span& span = spans_[i];
    span.farthestOfParent =
        farthestCorner(net.panels[at(crease.parent)], middleIn(crease, crease.parent));
    span.farthestOfChild =
        farthestCorner(net.panels[at(crease.child)], middleIn(crease, crease.child));
    const int above = places_[at(crease.parent)];
    if (above >= 0)
      span.toParents = distance(middleIn(net.creases[at(above)], crease.parent),
                                middleIn(crease, crease.parent));
  }
}

double CreaseSpans::farthest(int panel, int crease) const {
  const Span& span = spans_[at(crease)];
  return net_->creases[at(crease)].parent == panel ? span.farthestOfParent : span.farthestOfChild;
}

double CreaseSpans::between(int panel, int one, int other) const {
  if (places_[at(panel)] == one) return spans_[at(other)].toParents;
  if (places_[at(panel)] == other) return spans_[at(one)].toParents;
  return distance(middleIn(net_->creases[at(one)], panel),
                  middleIn(net_->creases[at(other)], panel));
}

/// How far the corners of a panel can be from a crease of the path: each crease in between adds its
/// distance from the next one, which no folding changes.
PairMotion::PairMotion(const Net& net, const CreaseSpans& spans, const std::vector<int>& path,
                       int a, int b)
    : a_(at(a)), b_(at(b)) {
  if (path.empty()) return;
  hinges_.reserve(path.size());
  int panel = a;
  double reach = spans.farthest(a, path.front());
  for (std::size_t i = 0; i < path.size(); ++i) {
    const double gap = i == 0 ? 0 : spans.between(panel, path[i - 1], path[i]);
    reach += gap;
    hinges_.push_back({at(path[i]), reach, gap});
    const Crease& crease = net.creases[at(path[i])];
    panel = crease.parent == panel ? crease.child : crease.parent;
  }
  reach = spans.farthest(b, path.back());
  for (std::size_t i = path.size(); i-- > 0;) {
    const double gap = hinges_[i].reachB;  // kept there on the way
    hinges_[i].reachB = reach;
    reach += gap;
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
