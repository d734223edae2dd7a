#pragma once

#include "geometry/point.h"

namespace creasewright {

/// An affine map of the plane: where the origin and a millimetre along each axis go.
struct PlaneMap {
  Point origin = {};
  Point x{1, 0};
  Point y{0, 1};

  [[nodiscard]] constexpr Point apply(Point p) const { return origin + turn(p); }
  /// Of a vector: no shift.
  [[nodiscard]] constexpr Point turn(Point v) const { return x * v.x + y * v.y; }
  /// How much larger areas become; negative where the map mirrors.
  [[nodiscard]] constexpr double factor() const { return cross(x, y); }
  /// First `inner`, then this.
  [[nodiscard]] constexpr PlaneMap after(const PlaneMap& inner) const {
    return {apply(inner.origin), turn(inner.x), turn(inner.y)};
  }
  /// Only where factor() is not zero.
  [[nodiscard]] constexpr PlaneMap inverse() const {
    const double by = factor();
    PlaneMap back{{}, Point{y.y, -x.y} / by, Point{-y.x, x.x} / by};
    back.origin = back.turn(origin) * -1;
    return back;
  }
};

}  // namespace creasewright
