#include "geometry/segments.h"

#include <algorithm>

namespace creasewright {
namespace {

int sign(double value) { return (value > 0) - (value < 0); }

bool onSegment(Point p, const Segment& s) {
  return std::min(s.a.x, s.b.x) <= p.x && p.x <= std::max(s.a.x, s.b.x) &&
         std::min(s.a.y, s.b.y) <= p.y && p.y <= std::max(s.a.y, s.b.y);
}

bool boxesMeet(const Segment& s, const Segment& t) {
  const auto meet = [](double a, double b, double c, double d) {
    return std::min(a, b) <= std::max(c, d) && std::min(c, d) <= std::max(a, b);
  };
  return meet(s.a.x, s.b.x, t.a.x, t.b.x) && meet(s.a.y, s.b.y, t.a.y, t.b.y);
}

}  // namespace

// The boxes are asked first: of two on one line, far apart, rounding may put each on both sides of
// the other.
bool meet(const Segment& s, const Segment& t) {
  if (!boxesMeet(s, t)) return false;
  const int a = sign(cross(s.b - s.a, t.a - s.a));
  const int b = sign(cross(s.b - s.a, t.b - s.a));
  const int c = sign(cross(t.b - t.a, s.a - t.a));
  const int d = sign(cross(t.b - t.a, s.b - t.a));
  if (a * b < 0 && c * d < 0) return true;
  return (a == 0 && onSegment(t.a, s)) || (b == 0 && onSegment(t.b, s)) ||
         (c == 0 && onSegment(s.a, t)) || (d == 0 && onSegment(s.b, t));
}

}  // namespace creasewright
