#include "edits/kinds/flap_shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace creasewright {

std::optional<Panel> flapShape(const FlapMeasures& m, double width) {
  const auto [depth, taper, radius] = m;
  const double outer = width - 2 * taper;
  if (outer < 1) return std::nullopt;
  Panel flap;
  const auto add = [&flap](Point corner, std::string_view edge) {
    flap.outline.push_back(corner);
    flap.edges.emplace_back(edge);
  };
  add({0, 0}, "inner");
  add({width, 0}, "right");
  const Point right{width - taper, depth};
  const Point left{taper, depth};
  if (radius < 1e-6) {
    add(right, "outer");
    add(left, "left");
    return flap;
  }
  // A corner's rounding takes as much of both its edges.
  const Point up = unit(right - Point{width, 0});
  const double turn = std::acos(std::clamp(-up.x, -1.0, 1.0));
  const double taken = radius * std::tan(turn / 2);
  if (2 * taken > outer || taken > distance(right, {width, 0})) return std::nullopt;
  const Point from = right - up * taken;
  add(from, "outer");
  const Point centre = from + turnLeft(up) * radius;
  const Polyline bow = arc(from, centre, turn * 180 / std::numbers::pi);
  for (const Point& p : bow) add(p, "outer");
  for (auto p = bow.rbegin(); p != bow.rend(); ++p) add({width - p->x, p->y}, "outer");
  add({width - from.x, from.y}, "left");
  return flap;
}

}  // namespace creasewright
