#pragma once

#include <array>

#include "geometry/polygon.h"

namespace creasewright {

/// Splits a simple counter-clockwise polygon into triangles by cutting ears; corners on a straight
/// edge make no triangle of their own.
std::vector<std::array<Point, 3>> triangulate(const Polygon& polygon);

}  // namespace creasewright
