#pragma once

#include "geometry/polygon.h"

namespace creasewright {

/// Whether a line has a point within a box.
bool meets(const Segment& line, const Bounds& box);

/// Whether `part` lies inside, or outside, of the simple polygon `whole`, no nearer than `margin`
/// mm to its edges, as far as the bounds of `part` tell: quick, and true is so; false says nothing.
bool plainlyInside(const Polygon& part, const Polygon& whole, double margin);
bool plainlyOutside(const Polygon& part, const Polygon& whole, double margin);

}  // namespace creasewright
