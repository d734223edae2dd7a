#include "extras/pull_shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/region.h"

namespace creasewright {
namespace {

constexpr int kSteps = 14;  // of the drawn loop

double lengthOf(const Polyline& line) {
  double length = 0;
  for (std::size_t i = 1; i < line.size(); ++i) length += distance(line[i - 1], line[i]);
  return length;
}

/// Half an ellipse between two holes, or a drop out of one, so far out of the face.
Polyline loopOf(const RibbonPull& pull, double out) {
  constexpr double kDrop = 1.0 / 6;  // of its reach: how far a drop is open to either side
  Polyline line;
  for (int i = 0; i <= kSteps; ++i) {
    const double turn = std::numbers::pi * i / kSteps;
    const double x = pull.holes == 2 ? -pull.spacing / 2 * std::cos(turn)
                                     : -pull.reach * kDrop * std::sin(2 * turn);
    line.push_back({x, out * std::sin(turn)});
  }
  return line;
}

Polygon rectangle(double left, double right, double half) {
  return {{left, -half}, {right, -half}, {right, half}, {left, half}};
}

}  // namespace

double pullLoopLength(const RibbonPull& pull) {
  return 2 * std::hypot(pull.reach, pull.spacing / 2);
}

Polyline pullLoop(const RibbonPull& pull) {
  const double length = pullLoopLength(pull);
  double low = 0;
  double high = length;
  constexpr int kHalvings = 40;
  for (int i = 0; i < kHalvings; ++i) {
    const double middle = (low + high) / 2;
    (lengthOf(loopOf(pull, middle)) < length ? low : high) = middle;
  }
  return loopOf(pull, low);
}

std::vector<Polygon> pullEnds(const RibbonNeed& need, const Panel& panel) {
  const RibbonPull& pull = *need.pull;
  const double half = need.width.mm() / 2;
  const double knot = 0.6 * need.width.mm();  // half of it
  const double from = pull.spacing / 2;
  // Tied, it takes four widths of ribbon.
  const double to = from + std::max(pull.taped ? pull.end : pull.end - 8 * half + knot, 2 * half);
  std::vector<Polygon> shapes;
  for (const double side : {-1.0, 1.0}) {
    Polygon end = rectangle(from, to, half);
    if (side < 0) {
      for (Point& p : end) p.x = -p.x;
      std::ranges::reverse(end);
    }
    shapes.push_back(std::move(end));
    const bool own = pull.holes == 2 || side > 0;  // the ends of one hole share a knot
    if (!pull.taped && own) {
      const double at = pull.holes == 2 ? side * from : 0;
      shapes.push_back(rectangle(at - knot, at + knot, knot));
    }
  }
  Polygon card;
  const Transform back = pull.face.place.inverse();
  for (const Point& p : panel.outline) {
    const Point3 there = back.apply(p);
    card.push_back({there.x, there.y});
  }
  std::vector<Polygon> ends;
  for (const Polygon& shape : shapes)
    for (Area& part : intersect(region(shape), region(card))) ends.push_back(std::move(part.outer));
  return ends;
}

}  // namespace creasewright
