#include "edits/kinds/cut_shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/region.h"

namespace creasewright {
namespace {

constexpr double kPi = std::numbers::pi;

/// Brings an outline's bounds to `width` by `height` round (0, 0).
Polygon fitted(Polygon shape, double width, double height) {
  const Bounds box = bounds(shape);
  const Point middle = (box.low + box.high) / 2;
  for (Point& p : shape)
    p = {(p.x - middle.x) * width / box.width(), (p.y - middle.y) * height / box.height()};
  return shape;
}

/// So many corners of a curve that is closed after one turn.
template <class Curve>
Polygon turn(int corners, Curve&& curve) {
  Polygon shape;
  for (int i = 0; i < corners; ++i) shape.push_back(curve(2 * kPi * i / corners));
  return shape;
}

}  // namespace

Polygon moved(Polygon shape, Point by) {
  for (Point& p : shape) p = p + by;
  return shape;
}

Polygon cutRectangle(double width, double height, double radius) {
  const Point half{width / 2, height / 2};
  const double r = std::min({radius, half.x, half.y});
  Polygon corners{{half.x, -half.y}, half, {-half.x, half.y}, {-half.x, -half.y}};
  if (r < 0.05) return corners;
  Polygon shape;
  for (std::size_t i = 0; i < 4; ++i) {
    const Point in = unit(corners[i] - corners[(i + 3) % 4]);
    const Point from = corners[i] - in * r;
    if (shape.empty() || distance(shape.back(), from) > 1e-6) shape.push_back(from);
    for (const Point& p : arc(from, from + turnLeft(in) * r, 90)) shape.push_back(p);
  }
  if (distance(shape.back(), shape.front()) < 1e-6) shape.pop_back();
  return shape;
}

Polygon cutHeart(double width, double height) {
  // A common heart curve of trigonometric terms.
  const Polygon heart = turn(96, [](double t) {
    const double s = std::sin(t);
    return Point{-16 * s * s * s,
                 13 * std::cos(t) - 5 * std::cos(2 * t) - 2 * std::cos(3 * t) - std::cos(4 * t)};
  });
  return fitted(heart, width, height);
}

Polygon cutStar(double width, double height) {
  // The inner corners of a pentagram lie at 0.382 of its outer ones.
  const Polygon star = turn(10, [](double t) {
    const bool outer = std::llround(t / (kPi / 5)) % 2 == 0;
    return Point{-std::sin(t), std::cos(t)} * (outer ? 1 : 0.381966);
  });
  return fitted(star, width, height);
}

Polygon cutScallop(double width, double height, int bows) {
  const Polygon wavy = turn(bows * 12, [bows](double t) {
    return Point{std::cos(t), std::sin(t)} * (0.9 + 0.1 * std::abs(std::sin(bows * t / 2)));
  });
  return fitted(wavy, width, height);
}

Polygon cutArch(double width, double height) {
  const double rise = std::min(width / 2, height);
  const double spring = height / 2 - rise;
  Polygon shape;
  if (rise < height) shape = {{-width / 2, -height / 2}, {width / 2, -height / 2}};
  constexpr int kSteps = 32;
  for (int i = 0; i <= kSteps; ++i) {
    const double t = kPi * i / kSteps;
    shape.push_back({width / 2 * std::cos(t), spring + rise * std::sin(t)});
  }
  return shape;
}

Polygon cutHangingSlot(double width, double height, double hole) {
  const Polygon slot = cutRectangle(width, height, height / 2);
  const Region both = unite({slot, ellipse({0, 0}, hole / 2, hole / 2)});
  return both.empty() ? slot : both.front().outer;
}

}  // namespace creasewright
