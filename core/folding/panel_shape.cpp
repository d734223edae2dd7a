#include "folding/panel_shape.h"

#include <algorithm>
#include <limits>
#include <utility>

#include "folding/convex_parts.h"
#include "geometry/region.h"

namespace creasewright {
namespace {

constexpr double kLeastOverlap = 1e-6;  // mm or mm2, rounding

/// What of a panel's inner area is in `part`; cut again into convex parts where the rim is not
/// convex.
std::vector<Polygon> coreOf(const Polygon& part, const Region& inner, bool wholePanel) {
  std::vector<Polygon> core;
  for (const Area& area : wholePanel ? inner : intersect(region(part), inner)) {
    Panel piece;
    piece.outline = area.outer;
    piece.openings = area.holes;
    for (Polygon& convex : convexParts(piece)) core.push_back(std::move(convex));
  }
  return core;
}

ConvexShape shapeOf(int panel, Polygon part, const Region& inner, bool wholePanel) {
  ConvexShape shape;
  shape.panel = panel;
  shape.core = coreOf(part, inner, wholePanel);
  for (const Polygon& each : shape.core) shape.coreBounds.push_back(bounds(each));
  const Bounds box = bounds(part);
  shape.centre = (box.low + box.high) / 2;
  for (const Point& corner : part)
    shape.radius = std::max(shape.radius, distance(shape.centre, corner));
  shape.corners = std::move(part);
  return shape;
}

using Interval = std::pair<double, double>;

Interval spanAlong(const std::vector<Point3>& corners, Point3 normal, double offset) {
  Interval span{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  for (const Point3& corner : corners) {
    const double height = dot(normal, corner) - offset;
    span.first = std::min(span.first, height);
    span.second = std::max(span.second, height);
  }
  return span;
}

/// Where a convex polygon meets the plane through `onPlane`, as positions along `line`; empty
/// (first > second) when it does not.
Interval cutAlong(const Polygon& polygon, const Transform& frame, Point3 onPlane, Point3 normal,
                  Point3 line) {
  Interval cut{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  Point3 before = frame.apply(polygon.back());
  double heightBefore = dot(normal, before - onPlane);
  for (const Point& corner : polygon) {
    const Point3 here = frame.apply(corner);
    const double height = dot(normal, here - onPlane);
    if ((height > 0) != (heightBefore > 0)) {
      const Point3 crossing = before + (here - before) * (heightBefore / (heightBefore - height));
      const double along = dot(line, crossing - onPlane);
      cut.first = std::min(cut.first, along);
      cut.second = std::max(cut.second, along);
    }
    before = here;
    heightBefore = height;
  }
  return cut;
}

/// Positions along the line in which two planes meet where the cores of `shape` cross the other's
/// plane.
std::vector<Interval> coreCuts(const PlacedShape& placed, Point3 onPlane, Point3 normal,
                               Point3 line) {
  std::vector<Interval> cuts;
  for (const Polygon& core : placed.shape->core) {
    const Interval cut = cutAlong(core, placed.frame, onPlane, normal, line);
    if (cut.first < cut.second) cuts.push_back(cut);
  }
  return cuts;
}

bool standsAcross(const PlacedShape& a, Point3 normal, double offset, double tolerance) {
  const Interval heights = spanAlong(a.corners, normal, offset);
  return heights.first < -tolerance && heights.second > tolerance;
}

bool apart(const Bounds& a, const Bounds& b) {
  return a.high.x <= b.low.x || b.high.x <= a.low.x || a.high.y <= b.low.y || b.high.y <= a.low.y;
}

/// What two convex polygons share, both counter-clockwise; fewer than three corners when nothing.
Polygon shared(Polygon common, const Polygon& with) {
  for (std::size_t i = 0; i < with.size() && common.size() >= 3; ++i)
    common = clipLeftOf(common, with[i], with[(i + 1) % with.size()]);
  return common;
}

}  // namespace

PlacedShape::PlacedShape(const ConvexShape& of, const Transform& place) : shape(&of), frame(place) {
  corners.reserve(of.corners.size());
  for (const Point& corner : of.corners) corners.push_back(place.apply(corner));
}

double reach(const std::vector<Point3>& corners, Point3 direction) {
  double farthest = -std::numeric_limits<double>::infinity();
  for (const Point3& corner : corners) farthest = std::max(farthest, dot(direction, corner));
  return farthest;
}

std::vector<ConvexShape> convexShapes(const Net& net, double tolerance) {
  std::vector<ConvexShape> shapes;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Panel& panel = net.panels[i];
    const Region inner = offset(cutOut(region(panel.outline), panel.openings), -tolerance);
    // Kept apart with their openings closed, as hardly anything goes through one; the cores know.
    Panel closed = panel;
    closed.openings.clear();
    std::vector<Polygon> parts = convexParts(closed);
    for (Polygon& part : parts)
      shapes.push_back(shapeOf(static_cast<int>(i), std::move(part), inner, parts.size() == 1));
  }
  return shapes;
}

bool cutDeeply(const PlacedShape& a, const PlacedShape& b, double tolerance) {
  const Point3 normalA = a.normal();
  const Point3 normalB = b.normal();
  const double offsetA = dot(normalA, a.corners.front());
  if (!standsAcross(b, normalA, offsetA, tolerance)) return false;
  const double offsetB = dot(normalB, b.corners.front());
  if (!standsAcross(a, normalB, offsetB, tolerance)) return false;
  const Point3 across = cross(normalA, normalB);
  const double sine = norm(across);
  if (sine < 1e-9) return false;
  const Point3 line = across / sine;
  // Positions along the line are measured from any point: both planes hold it up to a constant.
  const std::vector<Interval> cutsA = coreCuts(a, b.corners.front(), normalB, line);
  if (cutsA.empty()) return false;
  const double shift = dot(line, a.corners.front() - b.corners.front());
  for (const Interval& cutB : coreCuts(b, a.corners.front(), normalA, line))
    for (const Interval& cutA : cutsA)
      if (std::min(cutA.second, cutB.second + shift) - std::max(cutA.first, cutB.first + shift) >
          kLeastOverlap)
        return true;
  return false;
}

std::optional<double> heightOver(const PlacedShape& a, const PlacedShape& b) {
  const Transform toA = a.frame.inverse().after(b.frame);
  const Point3 normal = toA.normal();
  if (std::abs(normal.z) < 1e-6) return std::nullopt;
  const Point3 middleB = toA.apply(b.shape->centre);
  if (distance(a.shape->centre, {middleB.x, middleB.y}) > a.shape->radius + b.shape->radius)
    return std::nullopt;  // as most
  const Point3 origin = toA.apply(Point{0, 0});
  for (const Polygon& coreB : b.shape->core) {
    Polygon shadow;
    for (const Point& corner : coreB) {
      const Point3 seen = toA.apply(corner);
      shadow.push_back({seen.x, seen.y});
    }
    if (normal.z < 0) std::reverse(shadow.begin(), shadow.end());
    const Bounds box = bounds(shadow);
    for (std::size_t i = 0; i < a.shape->core.size(); ++i) {
      if (apart(box, a.shape->coreBounds[i])) continue;
      const Polygon common = shared(shadow, a.shape->core[i]);
      if (common.size() < 3 || signedArea(common) < kLeastOverlap) continue;
      const Point middle = centroid(common);
      return origin.z -
             (normal.x * (middle.x - origin.x) + normal.y * (middle.y - origin.y)) / normal.z;
    }
  }
  return std::nullopt;
}

}  // namespace creasewright
