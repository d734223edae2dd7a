#pragma once

#include <algorithm>
#include <vector>

#include "geometry/transform.h"
#include "net/net.h"

namespace creasewright::testing {

/// Whether a point is card of a panel, farther than `tolerance` from any of its edges.
inline bool isCard(const Panel& panel, Point at, double tolerance) {
  if (locate(at, panel.outline, tolerance) != Side::Inside) return false;
  return std::ranges::all_of(panel.openings, [&](const Polygon& hole) {
    return locate(at, hole, tolerance) == Side::Outside;
  });
}

/// Whether an edge of one panel goes right through the card of another, `tolerance` mm beyond its
/// plane on either side.
inline bool pierces(const Panel& one, const Transform& oneAt, const Panel& other,
                    const Transform& otherAt, double tolerance) {
  const Transform into = otherAt.inverse();
  std::vector<Point3> corners;
  for (const Point& corner : one.outline) corners.push_back(into.apply(oneAt.apply(corner)));
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Point3 a = corners[i];
    const Point3 b = corners[(i + 1) % corners.size()];
    if (std::min(a.z, b.z) > -tolerance || std::max(a.z, b.z) < tolerance) continue;
    const Point3 at = a + (b - a) * (a.z / (a.z - b.z));
    if (isCard(other, {at.x, at.y}, tolerance)) return true;
  }
  return false;
}

/// The same of either through the other.
inline bool panelsCut(const Panel& one, const Transform& oneAt, const Panel& other,
                      const Transform& otherAt, double tolerance) {
  return pierces(one, oneAt, other, otherAt, tolerance) ||
         pierces(other, otherAt, one, oneAt, tolerance);
}

}  // namespace creasewright::testing
