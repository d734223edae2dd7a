#pragma once

#include "geometry/polygon.h"

namespace creasewright {

/// The part of a ring within a box; parts of a concave one may be joined by doubled edges along its
/// sides, which hold no area. Empty where there is none.
Polygon clipToBox(Polygon ring, const Bounds& box);

}  // namespace creasewright
