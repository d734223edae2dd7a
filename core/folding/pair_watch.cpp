#include "folding/pair_watch.h"

#include <cmath>

namespace creasewright {
namespace {

std::size_t at(int index) { return static_cast<std::size_t>(index); }

/// On which side of a the plane between the two says that b lies: 1, -1, or 0 when they stand side
/// by side rather than one over the other.
int sideOf(Point3 normal, const PlacedShape& a) {
  constexpr double kOver = 0.5;  // cosine of 60 degrees
  const double along = dot(normal, a.normal());
  return along > kOver ? 1 : along < -kOver ? -1 : 0;
}

PlacedShape placedAt(const ConvexShape& shape, const Pose& pose) {
  return {shape, pose[at(shape.panel)]};
}

}  // namespace

bool PairWatch::passesThrough(const Context& context, double progress, int side) {
  const int before = side_;
  side_ = side;
  if (before * side >= 0) return false;
  const auto pose = context.steps.poseAt(progress);
  return pose &&
         coverEachOther(placedAt(context.shapes[a_], *pose), placedAt(context.shapes[b_], *pose));
}

bool PairWatch::collides(const Context& context, const PairMotion& motion, FoldStep& step) {
  const PlacedShape& a = step.place(context.shapes, a_);
  const PlacedShape& b = step.place(context.shapes, b_);
  if (a.shape->core.empty() || b.shape->core.empty()) return false;
  const RelativeMotion moves = motion.during(step);
  if (const auto found = separate(a, b, moves, context.tolerance, hint_))
    return !found->eitherWay && passesThrough(context, step.from, sideOf(found->normal, a));
  if (cutDeeply(a, b, context.tolerance)) return true;
  if (motion.most(step) < context.tolerance / 2) return false;
  if (!context.steps.halve(step)) return false;
  return collides(context, motion, *step.firstHalf) || collides(context, motion, *step.secondHalf);
}

bool PairWatch::cutsAt(const Context& context, const Pose& pose) const {
  return cutDeeply(placedAt(context.shapes[a_], pose), placedAt(context.shapes[b_], pose),
                   context.tolerance);
}

bool PairWatch::restsAt(const Context& context, const Pose& pose) const {
  const PlacedShape a = placedAt(context.shapes[a_], pose);
  const PlacedShape b = placedAt(context.shapes[b_], pose);
  return std::abs(dot(a.normal(), b.normal())) > 0.99 && coverEachOther(a, b);
}

}  // namespace creasewright
