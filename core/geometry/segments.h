#pragma once

#include "geometry/point.h"

namespace creasewright {

/// Whether two segments come together anywhere, if only in a point; exact up to rounding.
bool meet(const Segment& s, const Segment& t);

}  // namespace creasewright
