#include "folding/motion/pair_motion.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "folding/index.h"

namespace creasewright {

CreaseSpans::CreaseSpans(const Net& net) : net_(&net), spans_(net.creases.size()) {
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    if (crease.loop) continue;
    Span& span = spans_[i];
    span.onParent = {crease.onParent.b,
                     (crease.onParent.a - crease.onParent.b) / length(crease.onParent)};
    const auto swath = [&](int panel) {
      const Line line = lineOn(panel, static_cast<int>(i));
      constexpr double kFar = std::numeric_limits<double>::infinity();
      Swath found{0, kFar, -kFar};
      for (const Point& corner : net.panels[at(panel)].outline) {
        const Point from = corner - line.start;
        const double along = dot(from, line.along);
        found.reach = std::max(found.reach, std::abs(cross(line.along, from)));
        found.low = std::min(found.low, along);
        found.high = std::max(found.high, along);
      }
      return found;
    };
    span.ofParent = swath(crease.parent);
    span.ofChild = swath(crease.child);
  }
}

/// A child's frame lies along its crease, from its end to its start on the parent.
CreaseSpans::Line CreaseSpans::lineOn(int panel, int crease) const {
  if (net_->creases[at(crease)].parent == panel) return spans_[at(crease)].onParent;
  return {{0, 0}, {1, 0}};
}

const Swath& CreaseSpans::corners(int panel, int crease) const {
  const Span& span = spans_[at(crease)];
  return net_->creases[at(crease)].parent == panel ? span.ofParent : span.ofChild;
}

/// A point stands out from the first line by at most its reach, in any direction square to it; the
/// foot it stands on is farthest from the second line at an end.
Swath CreaseSpans::seenFrom(int panel, const Swath& seen, int from, int to) const {
  const Line first = lineOn(panel, from);
  const Line second = lineOn(panel, to);
  const Point low = first.start + first.along * seen.low - second.start;
  const Point high = first.start + first.along * seen.high - second.start;
  const double aslant = seen.reach * std::abs(cross(first.along, second.along));
  const double footLow = dot(low, second.along);
  const double footHigh = dot(high, second.along);
  return {seen.reach +
              std::max(std::abs(cross(second.along, low)), std::abs(cross(second.along, high))),
          std::min(footLow, footHigh) - aslant, std::max(footLow, footHigh) + aslant};
}

/// From each end towards the other: each crease sees the corners as the one before left them.
PairMotion::PairMotion(const Net& net, const CreaseSpans& spans, const std::vector<int>& path,
                       int a, int b)
    : a_(at(a)), b_(at(b)) {
  if (path.empty()) return;
  hinges_.reserve(path.size());
  const auto beyond = [&net](int crease, int panel) {
    const Crease& passed = net.creases[at(crease)];
    return passed.parent == panel ? passed.child : passed.parent;
  };
  int panel = a;
  Swath seen = spans.corners(a, path.front());
  for (std::size_t i = 0; i < path.size(); ++i) {
    if (i > 0) seen = spans.seenFrom(panel, seen, path[i - 1], path[i]);
    hinges_.push_back({at(path[i]), seen.reach, 0});
    panel = beyond(path[i], panel);
  }
  seen = spans.corners(b, path.back());
  for (std::size_t i = path.size(); i-- > 0;) {
    if (i + 1 < path.size()) seen = spans.seenFrom(panel, seen, path[i + 1], path[i]);
    hinges_[i].reachB = seen.reach;
    panel = beyond(path[i], panel);
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
