#include "geometry/apart.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

Bounds grown(const Polygon& part, double margin) {
  const Bounds box = bounds(part);
  return {box.low - Point{margin, margin}, box.high + Point{margin, margin}};
}

bool anyEdgeMeets(const Polygon& ring, const Bounds& box) {
  for (std::size_t i = 0; i < ring.size(); ++i)
    if (meets({ring[i], ring[i + 1 < ring.size() ? i + 1 : 0]}, box)) return true;
  return false;
}

/// The side on which all of a box lies that no edge of the ring meets.
Side sideOf(const Bounds& box, const Polygon& ring) {
  return locate((box.low + box.high) / 2, ring);
}

}  // namespace

bool meets(const Segment& line, const Bounds& box) {
  if (std::max(line.a.x, line.b.x) < box.low.x || std::min(line.a.x, line.b.x) > box.high.x ||
      std::max(line.a.y, line.b.y) < box.low.y || std::min(line.a.y, line.b.y) > box.high.y)
    return false;
  // Else only the line itself can part them.
  const Point along = line.b - line.a;
  const Point middle = (box.low + box.high) / 2 - line.a;
  const double reach = (std::abs(along.x) * box.height() + std::abs(along.y) * box.width()) / 2;
  return std::abs(cross(along, middle)) <= reach;
}

bool plainlyInside(const Polygon& part, const Polygon& whole, double margin) {
  const Bounds box = grown(part, margin);
  return !anyEdgeMeets(whole, box) && sideOf(box, whole) == Side::Inside;
}

bool plainlyOutside(const Polygon& part, const Polygon& whole, double margin) {
  const Bounds box = grown(part, margin);
  return !anyEdgeMeets(whole, box) && sideOf(box, whole) == Side::Outside;
}

}  // namespace creasewright
