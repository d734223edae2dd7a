#include "styles/parts/regular_polygon.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>
#include <string>

namespace creasewright {

Shape regularPolygon(int sides, double side) {
  Shape shape{{{0, 0}}, {}};
  Point at{0, 0};
  for (int i = 0; i < sides; ++i) {
    shape.edges.push_back("edge-" + std::to_string(i + 1));
    const double direction = 2 * std::numbers::pi * i / sides;
    at = at + Point{std::cos(direction), std::sin(direction)} * side;
    if (i + 1 < sides) shape.outline.push_back(at);
  }
  return shape;
}

Shape restedOn(const Shape& shape, std::string_view edge) {
  const auto found = std::ranges::find(shape.edges, edge);
  assert(found != shape.edges.end());
  const auto first = static_cast<std::size_t>(found - shape.edges.begin());
  const std::size_t n = shape.outline.size();
  const Point origin = shape.outline[first];
  const Point along = unit(shape.outline[(first + 1) % n] - origin);
  const auto turned = [&](Point p) {
    return Point{dot(p - origin, along), cross(along, p - origin)};
  };
  Shape rested;
  for (std::size_t i = 0; i < n; ++i) {
    rested.outline.push_back(turned(shape.outline[(first + i) % n]));
    rested.edges.push_back(shape.edges[(first + i) % n]);
  }
  for (Polygon opening : shape.openings) {
    for (Point& p : opening) p = turned(p);
    rested.openings.push_back(std::move(opening));
  }
  return rested;
}

double apothemOf(int sides, double side) { return side / 2 / std::tan(std::numbers::pi / sides); }

double sideOf(int sides, double apothem) {
  return 2 * apothem * std::tan(std::numbers::pi / sides);
}

double apothemAround(int sides, double length, double width) {
  double reach = 0;
  for (int i = 0; i < sides; ++i) {
    const double u = 2 * std::numbers::pi * i / sides - std::numbers::pi / 2;
    reach = std::max(reach, std::abs(std::cos(u)) * length / 2 + std::abs(std::sin(u)) * width / 2);
  }
  return reach;
}

}  // namespace creasewright
