#pragma once

#include <vector>

#include "geometry/region.h"
#include "geometry/transform.h"

namespace creasewright {

/// A plane piece of the scene: `shape` lies in the plane z = 0 of `frame`.
struct Plate {
  Transform frame;
  Region shape;
  Point3 layer;   ///< moves coplanar plates apart for ordering only (see layers.h)
  int owner = 0;  ///< what it is a part of, for the caller
};

/// Of two coplanar plates, whether `a` lies nearer to the eye; plates of one layer go by owner.
inline bool liesOver(const Plate& a, const Plate& b, Point3 towardsEye) {
  Point3 normal = b.frame.normal();
  if (dot(normal, towardsEye) < 0) normal = normal * -1;
  const double difference = dot(normal, a.layer - b.layer);
  if (std::abs(difference) > 1e-6) return difference > 0;
  return a.owner > b.owner;
}

}  // namespace creasewright
