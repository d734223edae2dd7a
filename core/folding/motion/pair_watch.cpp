#include "folding/motion/pair_watch.h"

#include <cmath>

#include "folding/index.h"

namespace creasewright {
namespace {

PlacedShape placedAt(const ConvexShape& shape, const Pose& pose) {
  return {shape, pose[at(shape.panel)]};
}

}  // namespace

/// Takes over on which side b lies in the middle of a step in which `normal` keeps the two apart.
/// What lies as good as in one plane keeps the side it came from.
bool PairWatch::changesSide(const PlacedShape& a, const PlacedShape& b, Point3 normal,
                            double tolerance) {
  constexpr double kOver = 0.5;  // cosine of 60 degrees: steeper ones stand side by side
  const int before = side_;
  const bool over = std::abs(dot(normal, a.normal())) > kOver;
  const std::optional<double> height = over ? heightOver(a, b) : std::nullopt;
  if (!height)
    side_ = 0;
  else if (std::abs(*height) > tolerance)
    side_ = *height > 0 ? 1 : -1;
  return before * side_ < 0;
}

bool PairWatch::collides(const Context& context, const PairMotion& motion, FoldStep& step) {
  const PlacedShape& a = step.place(context.shapes, a_);
  const PlacedShape& b = step.place(context.shapes, b_);
  if (a.shape->core.empty() || b.shape->core.empty()) return false;
  const RelativeMotion moves = motion.during(step);
  if (const auto found = separate(a, b, moves, context.tolerance, hint_))
    return changesSide(a, b, *found, context.tolerance);
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
  return std::abs(dot(a.normal(), b.normal())) > 0.99 && heightOver(a, b).has_value();
}

bool PairWatch::meetsAt(const Context& context, const Pose& pose) const {
  if (!restsAt(context, pose)) return false;
  const auto height =
      heightOver(placedAt(context.shapes[a_], pose), placedAt(context.shapes[b_], pose));
  return std::abs(*height) <= context.tolerance;
}

}  // namespace creasewright
