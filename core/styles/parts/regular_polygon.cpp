#include "styles/parts/regular_polygon.h"

#include <algorithm>
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
