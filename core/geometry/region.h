#pragma once

#include <vector>

#include "geometry/polygon.h"

namespace creasewright {

/// One outer ring (counter-clockwise) with its holes (clockwise).
struct Area {
  Polygon outer;
  std::vector<Polygon> holes;
};

/// A set of the plane as disjoint areas.
using Region = std::vector<Area>;

// Boolean operations by Clipper (64-bit integers): coordinates are rounded to 1 nm, results are
// exact on the rounded input up to 1 nm per crossing.
Region unite(const std::vector<Polygon>& polygons);
Region intersect(const Region& a, const Region& b);
Region subtract(const Region& a, const Region& b);
/// `whole` without some openings, which may lie and turn anyhow. Quick where they plainly are holes
/// of it that do not come near one another.
Region cutOut(const Region& whole, const std::vector<Polygon>& openings);
/// Grows (positive) or shrinks (negative) by `distance` mm with mitred corners.
Region offset(const Region& region, double distance);
Region region(const Polygon& polygon);
double area(const Region& region);  ///< mm2, holes taken out

}  // namespace creasewright
