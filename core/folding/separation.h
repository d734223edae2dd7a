#pragma once

#include <cstdint>
#include <optional>

#include "folding/fold_steps.h"

namespace creasewright {

/// How far two bodies may move against one another during half a step, seen from half way.
struct RelativeMotion {
  Twist twist;        ///< of b as seen from a
  double strayA = 0;  ///< mm that a corner of a may stray from that, seen from b
  double strayB = 0;  ///< mm that a corner of b may stray from that, seen from a
};

/// A plane between two parts for a whole step.
struct Separation {
  Point3 normal;           ///< unit, from a to b
  bool eitherWay = false;  ///< within the tolerance b may as well lie on the other side
};

/// Remembers which kind of plane kept a pair apart last: it often does so again.
struct SeparationHint {
  std::int32_t candidate = -1;
};

/// Finds a plane that keeps two parts on its two sides during the whole step, but for `tolerance`
/// mm: a plane of one of them, or one through an edge of one of them, or one between their nearest
/// points. Nothing is found for parts that meet and, as only these planes are tried, for some that
/// nearly do.
std::optional<Separation> separate(const PlacedShape& a, const PlacedShape& b,
                                   const RelativeMotion& motion, double tolerance,
                                   SeparationHint& hint);

}  // namespace creasewright
