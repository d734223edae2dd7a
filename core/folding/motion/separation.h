#pragma once

#include <cstdint>
#include <optional>

#include "folding/motion/fold_steps.h"

namespace creasewright {

/// How far two bodies may move against one another during half a step, seen from half way.
struct RelativeMotion {
  Twist twist;        ///< of b as seen from a
  double strayA = 0;  ///< mm that a corner of a may stray from that, seen from b
  double strayB = 0;  ///< mm that a corner of b may stray from that, seen from a
};

/// Remembers which kind of plane kept a pair apart last: it often does so again.
struct SeparationHint {
  std::int32_t candidate = -1;
};

/// Finds a plane that keeps two parts on its two sides during the whole step, but for `tolerance`
/// mm: a plane of one of them, or one through an edge of one of them, or one between their nearest
/// points. Nothing is found for parts that meet and, as only these planes are tried, for some that
/// nearly do. Returns its unit normal, pointing from a to b.
std::optional<Point3> separate(const PlacedShape& a, const PlacedShape& b,
                               const RelativeMotion& motion, double tolerance,
                               SeparationHint& hint);

}  // namespace creasewright
