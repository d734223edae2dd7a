#pragma once

#include <vector>

#include "geometry/point.h"

namespace creasewright {

/// Corners of a closed outline, counter-clockwise for solids, in millimetres; the last corner joins
/// the first.
using Polygon = std::vector<Point>;
/// An open run of points.
using Polyline = std::vector<Point>;

struct Bounds {
  Point low;
  Point high;
  [[nodiscard]] double width() const { return high.x - low.x; }
  [[nodiscard]] double height() const { return high.y - low.y; }
  constexpr bool operator==(const Bounds&) const = default;
};

enum class Side { Outside, Boundary, Inside };

double signedArea(const Polygon& polygon);  ///< mm2, positive when counter-clockwise
double perimeter(const Polygon& polygon);
Point centroid(const Polygon& polygon);
Bounds bounds(const Polygon& polygon);
/// Grows a box so that it holds a point; the first one is all of it.
void include(Bounds& box, Point p, bool first = false);
/// Where `p` lies, with a band of `tolerance` mm counted as the boundary.
Side locate(Point p, const Polygon& polygon, double tolerance = 1e-9);
/// No two edges meet except neighbours at their shared corner.
bool isSimple(const Polygon& polygon);
/// Whether all of `part` lies left of every edge of `whole`, but for `slack` mm: then it is inside.
/// False says nothing of parts in the nooks of a polygon that is not convex.
bool liesWellInside(const Polygon& part, const Polygon& whole, double slack);
/// Whether an edge of one of two polygons parts them, but for `slack` mm. False says nothing where
/// one is not convex.
bool partedByEdge(const Polygon& a, const Polygon& b, double slack);
double distanceToSegment(Point p, const Segment& s);
/// Counter-clockwise convex hull.
Polygon convexHull(std::vector<Point> points);
/// Points along a circular arc from `from` about `centre`, turning by `sweepDegrees` (positive =
/// left), without `from`, with the end; no point is farther than `tolerance` mm from the arc.
Polyline arc(Point from, Point centre, double sweepDegrees, double tolerance = 0.05);
/// An ellipse as 64 corners on it, counter-clockwise; among them its four ends and the four
/// corners of the largest rectangle inside.
Polygon ellipse(Point centre, double halfWidth, double halfHeight);
/// A convex polygon that is the part of `polygon` left of the directed line a->b
/// (Sutherland-Hodgman; for a concave polygon parts may be joined by a doubled edge on the line).
Polygon clipLeftOf(const Polygon& polygon, Point a, Point b);

}  // namespace creasewright
