#pragma once

#include "geometry/polygon.h"

namespace creasewright {

/// A closed ring with corners left out where what is left passes within `tolerance` of them (after
/// Douglas and Peucker, 1973, from memory). Nothing where no area would be left.
Polygon fewerPoints(const Polygon& ring, double tolerance);

}  // namespace creasewright
