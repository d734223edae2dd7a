#pragma once

#include <optional>

#include "folding/motion/fold_steps.h"
#include "folding/motion/pair_motion.h"

namespace creasewright {

/// Follows two convex parts through the stages and remembers on which side of the first the second
/// lies.
class PairWatch {
 public:
  PairWatch(std::size_t a, std::size_t b) : a_(a), b_(b) {}

  struct Context {
    const std::vector<ConvexShape>& shapes;
    FoldSteps& steps;
    double tolerance;  ///< mm
  };

  /// Whether the one goes through the other during the step. A loop that cannot be followed ends
  /// the step as if nothing happened; FoldSteps::problem() tells.
  bool collides(const Context& context, const PairMotion& motion, FoldStep& step);
  /// Whether they cut one another in a pose.
  [[nodiscard]] bool cutsAt(const Context& context, const Pose& pose) const;
  /// Forgets the side, where the way between is not known.
  void forget() { side_ = 0; }

  /// 1 when b lies above the drawn face of a, -1 when below, 0 when not over one another or
  /// unknown.
  [[nodiscard]] int side() const { return side_; }
  /// Whether the two lie in one plane, one over the other.
  [[nodiscard]] bool restsAt(const Context& context, const Pose& pose) const;
  /// The same, and no farther than the tolerance from one another.
  [[nodiscard]] bool meetsAt(const Context& context, const Pose& pose) const;

 private:
  bool changesSide(const PlacedShape& a, const PlacedShape& b, Point3 normal, double tolerance);

  std::size_t a_;
  std::size_t b_;
  int side_ = 0;
  SeparationHint hint_;
};

}  // namespace creasewright
