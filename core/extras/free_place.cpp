#include "extras/free_place.h"

#include <algorithm>

namespace creasewright {
namespace {

Point nearestOn(const Segment& s, Point p) {
  const Point along = s.b - s.a;
  const double whole = dot(along, along);
  const double share = whole > 0 ? std::clamp(dot(p - s.a, along) / whole, 0.0, 1.0) : 0;
  return s.a + along * share;
}

bool holds(const Area& area, Point p) {
  return locate(p, area.outer) != Side::Outside &&
         std::ranges::none_of(
             area.holes, [&](const Polygon& hole) { return locate(p, hole) == Side::Inside; });
}

/// All points from which the shape touches an edge.
Polygon touching(const Polygon& shape, const Segment& edge) {
  std::vector<Point> corners;
  for (const Point& p : shape) {
    corners.push_back(edge.a - p);
    corners.push_back(edge.b - p);
  }
  return convexHull(std::move(corners));
}

void addTouching(const Polygon& shape, const Polygon& ring, std::vector<Polygon>& all) {
  for (std::size_t i = 0; i < ring.size(); ++i)
    all.push_back(touching(shape, {ring[i], ring[(i + 1) % ring.size()]}));
}

}  // namespace

Region placesFor(const Polygon& shape, const Region& free) {
  const Polygon hull = convexHull(shape);
  std::vector<Polygon> barred;
  for (const Area& part : free) {
    addTouching(hull, part.outer, barred);
    for (const Polygon& hole : part.holes) addTouching(hull, hole, barred);
  }
  constexpr double kHair = 5e-5;  // mm, so that a place that just fits is one
  return barred.empty() ? Region{} : subtract(free, offset(unite(barred), -kHair));
}

std::optional<Point> nearestPlace(const Region& places, Point wanted) {
  std::optional<Point> best;
  for (const Area& part : places) {
    if (holds(part, wanted)) return wanted;
    const auto visit = [&](const Polygon& ring) {
      for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point p = nearestOn({ring[i], ring[(i + 1) % ring.size()]}, wanted);
        if (!best || distance(p, wanted) < distance(*best, wanted)) best = p;
      }
    };
    visit(part.outer);
    std::ranges::for_each(part.holes, visit);
  }
  return best;
}

}  // namespace creasewright
