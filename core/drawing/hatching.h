#pragma once

#include <vector>

#include "geometry/polygon.h"

namespace creasewright {

/// Hatching of areas for adhesive: mm between its lines, and how it leans for the drawn face and
/// for the one behind.
inline constexpr double kGlueSpacing = 2;
inline constexpr double kGlueDegrees = 45;
inline constexpr double kGlueBehindDegrees = -45;

/// Parallel lines filling an area with holes (even-odd rule over all `rings`), `spacing` mm apart,
/// rising at `degrees` from the x axis. Lines lie on one grid through the origin, so that
/// neighbouring areas match. Pieces shorter than 0.01 mm are left out.
std::vector<Segment> hatch(const std::vector<Polygon>& rings, double spacing, double degrees);

}  // namespace creasewright
