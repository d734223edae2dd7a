#pragma once

#include <optional>

#include "geometry/region.h"

namespace creasewright {

/// The points at which a shape drawn about (0, 0) may be laid to lie wholly inside `free`, not
/// turned. A shape that is not convex counts as its hull.
Region placesFor(const Polygon& shape, const Region& free);

/// The point of `places` nearest to `wanted`, or nothing where there is none.
std::optional<Point> nearestPlace(const Region& places, Point wanted);

}  // namespace creasewright
