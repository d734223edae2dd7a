#include "geometry/polygon.h"

#include <algorithm>
#include <utility>

#include "geometry/segments.h"
#include "units/angle.h"

namespace creasewright {
namespace {

Point cornerAfter(const Polygon& polygon, std::size_t i) {
  return polygon[i + 1 == polygon.size() ? 0 : i + 1];
}

/// Whether all corners lie left of a line, or right of it where `side` is -1, but for `slack` mm.
bool allLeftOf(const Polygon& corners, const Segment& line, double side, double slack) {
  const Point way = line.b - line.a;
  const double least = -slack * std::sqrt(dot(way, way));
  return std::ranges::all_of(
      corners, [&](const Point& p) { return cross(way, p - line.a) * side >= least; });
}

/// Whether `p` is so near the box about a segment that it may be near the segment.
bool near(Point p, const Segment& s, double distance) {
  return std::min(s.a.x, s.b.x) <= p.x + distance && p.x <= std::max(s.a.x, s.b.x) + distance &&
         std::min(s.a.y, s.b.y) <= p.y + distance && p.y <= std::max(s.a.y, s.b.y) + distance;
}

/// Neighbouring edges share one corner; they must not fold back onto each other.
bool foldsBack(Point before, Point corner, Point after) {
  return cross(corner - before, after - corner) == 0 && dot(corner - before, after - corner) < 0;
}

/// Whether every corner turns the same way, and the way round turns once only: then no two edges
/// meet. False says nothing.
bool isPlainlyConvex(const Polygon& polygon) {
  constexpr double kTurn = 1e-6;  // mm2
  const std::size_t n = polygon.size();
  int changes = 0;  // between going left and going right
  double before = 0;
  double first = 0;
  bool left = false;
  for (std::size_t i = 0; i < n; ++i) {
    const Point a = polygon[i];
    const Point b = polygon[i + 1 < n ? i + 1 : 0];
    const double turn = cross(b - a, polygon[i + 2 < n ? i + 2 : i + 2 - n] - b);
    if (i == 0) left = turn > 0;
    if (std::abs(turn) < kTurn || (turn > 0) != left) return false;
    const double across = b.x - a.x;
    if (across == 0) continue;
    if (before * across < 0) ++changes;
    if (first == 0) first = across;
    before = across;
  }
  return changes + (before * first < 0 ? 1 : 0) == 2;
}

}  // namespace

double signedArea(const Polygon& polygon) {
  if (polygon.empty()) return 0;
  double twice = 0;
  // Relative to the first corner, so that a small outline far from the origin keeps its digits.
  for (std::size_t i = 1; i + 1 < polygon.size(); ++i)
    twice += cross(polygon[i] - polygon[0], polygon[i + 1] - polygon[0]);
  return twice / 2;
}

double perimeter(const Polygon& polygon) {
  double sum = 0;
  for (std::size_t i = 0; i < polygon.size(); ++i)
    sum += distance(polygon[i], cornerAfter(polygon, i));
  return sum;
}

Point centroid(const Polygon& polygon) {
  const double area = signedArea(polygon);
  Point sum;
  if (area == 0) {
    for (const Point& p : polygon) sum = sum + p / static_cast<double>(polygon.size());
    return sum;
  }
  for (std::size_t i = 1; i + 1 < polygon.size(); ++i) {
    const Point a = polygon[i] - polygon[0];
    const Point b = polygon[i + 1] - polygon[0];
    sum = sum + (a + b) * (cross(a, b) / 6);
  }
  return polygon[0] + sum / area;
}

Bounds bounds(const Polygon& polygon) {
  if (polygon.empty()) return {};
  Bounds box{polygon[0], polygon[0]};
  for (const Point& p : polygon) include(box, p);
  return box;
}

void include(Bounds& box, Point p, bool first) {
  if (first) box = {p, p};
  box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
  box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
}

Side locate(Point p, const Polygon& polygon, double tolerance) {
  bool inside = false;
  if (polygon.empty()) return Side::Outside;
  Point a = polygon.back();
  for (const Point b : polygon) {
    const Segment edge{std::exchange(a, b), b};
    const auto [low, high] = std::minmax(edge.a.y, edge.b.y);
    if (low > p.y + tolerance || p.y > high + tolerance) continue;  // as most edges are
    if (near(p, edge, tolerance) && distanceToSegment(p, edge) <= tolerance) return Side::Boundary;
    if ((edge.a.y > p.y) != (b.y > p.y) &&
        p.x < edge.a.x + (b.x - edge.a.x) * (p.y - edge.a.y) / (b.y - edge.a.y))
      inside = !inside;
  }
  return inside ? Side::Inside : Side::Outside;
}

bool isSimple(const Polygon& polygon) {
  const std::size_t n = polygon.size();
  if (n < 3) return false;
  if (isPlainlyConvex(polygon)) return true;
  for (std::size_t i = 0; i < n; ++i) {
    const Point a = polygon[i];
    const Point b = cornerAfter(polygon, i);
    if (a == b || foldsBack(a, b, cornerAfter(polygon, (i + 1) % n))) return false;
    for (std::size_t j = i + 2; j < n; ++j) {
      if (i == 0 && j + 1 == n) continue;
      if (meet({a, b}, {polygon[j], cornerAfter(polygon, j)})) return false;
    }
  }
  return true;
}

bool liesWellInside(const Polygon& part, const Polygon& whole, double slack) {
  for (std::size_t i = 0; i < whole.size(); ++i)
    if (!allLeftOf(part, {whole[i], cornerAfter(whole, i)}, 1, slack)) return false;
  return true;
}

bool partedByEdge(const Polygon& a, const Polygon& b, double slack) {
  for (const auto& [one, other] : {std::pair{&a, &b}, std::pair{&b, &a}})
    for (std::size_t i = 0; i < one->size(); ++i) {
      const Segment edge{(*one)[i], cornerAfter(*one, i)};
      if (allLeftOf(*other, edge, -1, slack) && allLeftOf(*one, edge, 1, slack)) return true;
    }
  return false;
}

double distanceToSegment(Point p, const Segment& s) {
  const Point along = s.b - s.a;
  const double square = dot(along, along);
  if (square == 0) return distance(p, s.a);
  const double t = std::clamp(dot(p - s.a, along) / square, 0.0, 1.0);
  return distance(p, s.a + along * t);
}

Polygon convexHull(std::vector<Point> points) {
  // Andrew's monotone chain.
  std::ranges::sort(points,
                    [](Point a, Point b) { return a.x < b.x || (a.x == b.x && a.y < b.y); });
  if (points.size() < 3) return points;
  Polygon hull;
  const auto sweep = [&hull](auto from, auto to) {
    const std::size_t start = hull.size();
    for (auto it = from; it != to; ++it) {
      while (hull.size() >= start + 2 &&
             cross(hull.back() - hull[hull.size() - 2], *it - hull.back()) <= 0)
        hull.pop_back();
      hull.push_back(*it);
    }
    hull.pop_back();
  };
  sweep(points.begin(), points.end());
  sweep(points.rbegin(), points.rend());
  return hull;
}

Polyline arc(Point from, Point centre, double sweepDegrees, double tolerance) {
  const double radius = distance(from, centre);
  if (radius == 0) return {};
  const double sweep = Angle::degrees(sweepDegrees).radians();
  // The chord of angle a stays within r (1 - cos(a/2)) of the arc.
  const double most = 2 * std::acos(std::max(0.0, 1 - tolerance / radius));
  const int steps = std::max(2, static_cast<int>(std::ceil(std::abs(sweep) / most)));
  Polyline points;
  const Point spoke = from - centre;
  for (int i = 1; i <= steps; ++i) {
    const double a = sweep * i / steps;
    points.push_back(centre + Point{spoke.x * std::cos(a) - spoke.y * std::sin(a),
                                    spoke.x * std::sin(a) + spoke.y * std::cos(a)});
  }
  return points;
}

Polygon ellipse(Point centre, double halfWidth, double halfHeight) {
  constexpr int kCorners = 64;
  Polygon outline;
  for (int i = 0; i < kCorners; ++i) {
    const double turn = 2 * std::numbers::pi * i / kCorners;
    outline.push_back(centre + Point{halfWidth * std::cos(turn), halfHeight * std::sin(turn)});
  }
  return outline;
}

Polygon clipLeftOf(const Polygon& polygon, Point a, Point b) {
  Polygon kept;
  const auto height = [a, b](Point p) { return cross(b - a, p - a); };
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Point p = polygon[i];
    const Point q = cornerAfter(polygon, i);
    const double hp = height(p);
    const double hq = height(q);
    if (hp >= 0) kept.push_back(p);
    if ((hp > 0 && hq < 0) || (hp < 0 && hq > 0)) kept.push_back(p + (q - p) * (hp / (hp - hq)));
  }
  return kept;
}

}  // namespace creasewright
