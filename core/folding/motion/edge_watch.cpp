#include "folding/motion/edge_watch.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "folding/index.h"

namespace creasewright {
namespace {

constexpr double kTurnedUp = 5;  // degrees, as far as card gives over the length of a flap
constexpr double kFinest = 2.5;  // degrees in half a step, when only the neighbour turns

/// Positions of a convex polygon's corners along an edge, beyond it, and above its panel.
struct Spans {
  double along[2];
  double beyond[2];
  double height = 0;  ///< of the corner farthest from the plane
};

Spans spansOf(const Polygon& core, const Transform& toPanel, const PlacedEdge& edge) {
  constexpr double kFar = std::numeric_limits<double>::infinity();
  Spans spans{{kFar, -kFar}, {kFar, -kFar}};
  for (const Point& corner : core) {
    const Point3 seen = toPanel.apply(corner);
    const Point from = Point{seen.x, seen.y} - edge.from;
    const double along = dot(from, edge.along);
    const double beyond = dot(from, edge.outward);
    spans.along[0] = std::min(spans.along[0], along);
    spans.along[1] = std::max(spans.along[1], along);
    spans.beyond[0] = std::min(spans.beyond[0], beyond);
    spans.beyond[1] = std::max(spans.beyond[1], beyond);
    spans.height = std::max(spans.height, std::abs(seen.z));
  }
  return spans;
}

/// The part of a convex polygon within `slack` mm of the edge's line lies over the edge itself.
bool meetsEdge(const Polygon& core, const Transform& toPanel, const PlacedEdge& edge,
               double slack) {
  Spans near{{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()},
             {}};
  Point before;
  double beyondBefore = 0;
  for (std::size_t i = 0; i <= core.size(); ++i) {
    const Point3 seen = toPanel.apply(core[i % core.size()]);
    const Point from = Point{seen.x, seen.y} - edge.from;
    const Point here{dot(from, edge.along), dot(from, edge.outward)};
    if (i > 0 && (here.y > 0) != (beyondBefore > 0)) {
      const double x = before.x + (here.x - before.x) * beyondBefore / (beyondBefore - here.y);
      near.along[0] = std::min(near.along[0], x);
      near.along[1] = std::max(near.along[1], x);
    }
    before = here;
    beyondBefore = here.y;
  }
  return near.along[1] > slack && near.along[0] < edge.length - slack;
}

}  // namespace

/// A lower bound in mm of how far some corner has to move before the part can stick out over the
/// edge; 0 when it does.
double EdgeWatch::wayToCrossing(const Context& context, const Pose& pose) const {
  const PlacedEdge edge = placedEdge(*net_, edge_, pose);
  const ConvexShape& shape = context.shapes[part_];
  const Transform toPanel = pose[at(edge_.panel)].inverse().after(pose[at(shape.panel)]);
  const double slack = context.tolerance;
  double least = std::numeric_limits<double>::infinity();
  for (const Polygon& core : shape.core) {
    const Spans spans = spansOf(core, toPanel, edge);
    double way =
        std::max({0.0, spans.height - slack, slack - spans.beyond[1], slack + spans.beyond[0],
                  slack - spans.along[1], spans.along[0] - (edge.length - slack)});
    // Beside a corner of the card: near enough in every direction, but past the edge's end.
    if (way == 0 && !meetsEdge(core, toPanel, edge, slack)) way = slack / 4;
    least = std::min(least, way);
  }
  return least;
}

bool EdgeWatch::turnedUp(const Pose& pose, const std::vector<Angle>& angles) const {
  return turnAt(*net_, edge_, pose, angles) * side_ > kTurnedUp;
}

bool EdgeWatch::crossesAt(const Context& context, const Pose& pose,
                          const std::vector<Angle>& angles) const {
  return wayToCrossing(context, pose) == 0 && turnedUp(pose, angles);
}

/// Whether the neighbour is never turned up during the step, nor nearly.
bool EdgeWatch::staysDown(const FoldStep& step) const {
  if (edge_.crease < 0) return false;
  const std::size_t crease = at(edge_.crease);
  const double strays = Angle::radians(step.turns[crease] + step.uneven[crease]).degrees();
  return step.middle[crease].degrees() * side_ + strays < kTurnedUp - kFinest;
}

bool EdgeWatch::crosses(const Context& context, const PairMotion& motion, FoldStep& step) const {
  if (staysDown(step)) return false;
  const double moves = motion.mostOfA(step);
  const double way = wayToCrossing(context, step.pose);
  if (way > moves) return false;
  if (way == 0 && turnedUp(step.pose, step.middle)) return true;
  const double turns =
      edge_.crease < 0 ? 0 : Angle::radians(step.turns[at(edge_.crease)]).degrees();
  if (moves < context.tolerance / 2 && turns < kFinest) return false;
  if (!context.steps.halve(step)) return false;
  return crosses(context, motion, *step.firstHalf) || crosses(context, motion, *step.secondHalf);
}

}  // namespace creasewright
