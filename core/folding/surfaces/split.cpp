#include "folding/surfaces/split.h"

#include <algorithm>

namespace creasewright {
namespace {

/// height = x * p.x + y * p.y + c over the plate's own plane.
struct Line {
  double x;
  double y;
  double c;
  [[nodiscard]] double height(Point p) const { return x * p.x + y * p.y + c; }
};

Line trace(const Plate& plate, const Plane& plane) {
  return {dot(plane.normal, plate.frame.turn({1, 0, 0})),
          dot(plane.normal, plate.frame.turn({0, 1, 0})),
          plane.height(plate.frame.apply(Point{0, 0}))};
}

bool isConvex(const Polygon& ring) {
  const std::size_t n = ring.size();
  for (std::size_t i = 0; i < n; ++i)
    if (cross(ring[(i + 1) % n] - ring[i], ring[(i + 2) % n] - ring[(i + 1) % n]) < 0) return false;
  return true;
}

/// The part of a convex ring with sign * height >= 0.
Polygon clipConvex(const Polygon& ring, const Line& line, double sign) {
  Polygon kept;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i];
    const Point b = ring[(i + 1) % ring.size()];
    const double heightA = sign * line.height(a);
    const double heightB = sign * line.height(b);
    if (heightA >= 0) kept.push_back(a);
    if ((heightA > 0 && heightB < 0) || (heightA < 0 && heightB > 0))
      kept.push_back(a + (b - a) * (heightA / (heightA - heightB)));
  }
  return kept;
}

/// A rectangle that covers the part of `box` with sign * height >= 0.
Polygon halfOf(const Bounds& box, const Line& line, double sign) {
  const double slope = std::hypot(line.x, line.y);
  const Point inward = Point{line.x, line.y} * (sign / slope);
  const Point middle = (box.low + box.high) / 2;
  const Point foot = middle - inward * (sign * line.height(middle) / slope);
  const double reach = 2 * distance(box.low, box.high) + distance(foot, middle);
  const Point along = turnLeft(inward) * -reach;
  const Point deep = inward * (2 * reach);
  return {foot - along, foot - along + deep, foot + along + deep, foot + along};
}

Region clip(const Region& shape, const Line& line, double sign) {
  if (shape.size() == 1 && shape[0].holes.empty() && isConvex(shape[0].outer)) {
    const Polygon kept = clipConvex(shape[0].outer, line, sign);
    if (kept.size() < 3) return {};
    return {Area{kept, {}}};
  }
  Bounds box = bounds(shape[0].outer);
  for (const Area& area : shape) {
    const Bounds more = bounds(area.outer);
    box.low = {std::min(box.low.x, more.low.x), std::min(box.low.y, more.low.y)};
    box.high = {std::max(box.high.x, more.high.x), std::max(box.high.y, more.high.y)};
  }
  Polygon half = halfOf(box, line, sign);
  if (signedArea(half) < 0) std::reverse(half.begin(), half.end());
  return intersect(shape, region(half));
}

}  // namespace

Plane planeOf(const Plate& plate) {
  const Point3 normal = plate.frame.normal();
  return {normal, dot(normal, plate.frame.apply(Point{0, 0}))};
}

Where classify(const Plate& plate, const Plane& plane, double tolerance) {
  const Line line = trace(plate, plane);
  bool above = false;
  bool below = false;
  for (const Area& area : plate.shape) {
    for (const Point& corner : area.outer) {
      const double height = line.height(corner);
      above = above || height > tolerance;
      below = below || height < -tolerance;
    }
  }
  if (above && below) return Where::Across;
  if (above) return Where::Front;
  return below ? Where::Back : Where::Coplanar;
}

SplitSheet split(const Plate& plate, const Plane& plane) {
  const Line line = trace(plate, plane);
  SplitSheet parts{plate, plate};
  parts.front.shape = clip(plate.shape, line, 1);
  parts.back.shape = clip(plate.shape, line, -1);
  return parts;
}

}  // namespace creasewright
