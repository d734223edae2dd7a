#pragma once

#include <array>
#include <vector>

#include "geometry/point.h"

namespace creasewright {

/// Card that only touches a box, within this many mm, is not in its way.
inline constexpr double kTouch = 1e-7;

using Coordinates = std::array<double, 3>;
inline Coordinates coordinates(Point3 p) { return {p.x, p.y, p.z}; }
inline Point3 point(const Coordinates& c) { return {c[0], c[1], c[2]}; }
using Piece3 = std::vector<Coordinates>;  ///< a convex, plane part of the card

struct Box {
  Coordinates low;
  Coordinates high;
  [[nodiscard]] double volume() const {
    return (high[0] - low[0]) * (high[1] - low[1]) * (high[2] - low[2]);
  }
};

/// The part of `piece`, which has corners, that comes within half a caliper of the box.
Piece3 within(const Piece3& piece, const Box& box, double half);

}  // namespace creasewright
