#include "folding/triangulate.h"

namespace creasewright {
namespace {

bool covers(const std::array<Point, 3>& t, Point p) {
  if (p == t[0] || p == t[1] || p == t[2]) return false;
  return cross(t[1] - t[0], p - t[0]) >= 0 && cross(t[2] - t[1], p - t[1]) >= 0 &&
         cross(t[0] - t[2], p - t[2]) >= 0;
}

bool isEar(const Polygon& rest, const std::array<Point, 3>& ear) {
  for (const Point& corner : rest)
    if (covers(ear, corner)) return false;
  return true;
}

}  // namespace

std::vector<std::array<Point, 3>> triangulate(const Polygon& polygon) {
  std::vector<std::array<Point, 3>> triangles;
  Polygon rest = polygon;
  std::size_t tried = 0;
  std::size_t i = 0;
  while (rest.size() >= 3 && tried <= rest.size()) {
    const std::size_t n = rest.size();
    const std::array<Point, 3> ear{rest[(i + n - 1) % n], rest[i % n], rest[(i + 1) % n]};
    const double twice = cross(ear[1] - ear[0], ear[2] - ear[0]);
    const bool straight = std::abs(twice) < 1e-12;
    if (!straight && (twice < 0 || !isEar(rest, ear))) {
      ++i;
      ++tried;
      continue;
    }
    if (!straight) triangles.push_back(ear);
    rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(i % n));
    tried = 0;
  }
  return triangles;
}

}  // namespace creasewright
