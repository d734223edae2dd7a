#include "document/laid_pieces.h"

#include <algorithm>
#include <cmath>

#include "geometry/region.h"

namespace creasewright {

std::vector<Point3> topOf(const LaidPiece& piece) {
  std::vector<Point3> top;
  for (const Point& p : piece.outline)
    top.push_back(piece.place.apply(Point3{p.x, p.y, -piece.caliper / 2}));
  return top;
}

double liftOver(const std::vector<LaidPiece>& laid, const Polygon& outline,
                const Transform& place) {
  constexpr double kFacing = 0.95;  // cosine
  constexpr double kNear = 40;      // mm: what is farther lies on another part of the box
  constexpr double kClear = 0.3;    // mm
  constexpr double kCounts = 0.01;  // mm2
  double lift = 0;
  const Transform back = place.inverse();
  for (const LaidPiece& piece : laid) {
    const Transform there = back.after(piece.place);
    if (there.normal().z < kFacing) continue;
    Polygon flat;
    double top = -kNear;
    for (const Point& p : piece.outline) {
      const Point3 at = there.apply(p);
      flat.push_back({at.x, at.y});
      top = std::max(top, piece.caliper / 2 - at.z);
    }
    if (std::abs(top) >= kNear || top + kClear <= lift) continue;
    if (signedArea(flat) < 0) std::ranges::reverse(flat);
    if (area(intersect(region(outline), region(flat))) > kCounts) lift = top + kClear;
  }
  return lift;
}

}  // namespace creasewright
