#pragma once

#include "geometry/polygon.h"

namespace creasewright {

/// A round hole as an opening of a panel (clockwise), mm.
Polygon punchedHole(Point centre, double diameter);

}  // namespace creasewright
