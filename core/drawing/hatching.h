#pragma once

#include <vector>

#include "geometry/polygon.h"

namespace creasewright {

/// Parallel lines filling an area with holes (even-odd rule over all `rings`), `spacing` mm apart,
/// rising at `degrees` from the x axis. Lines lie on one grid through the origin, so that
/// neighbouring areas match. Pieces shorter than 0.01 mm are left out.
std::vector<Segment> hatch(const std::vector<Polygon>& rings, double spacing, double degrees);

}  // namespace creasewright
