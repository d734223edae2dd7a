#include "folding/cavity/cavity_parts.h"

#include <algorithm>

namespace creasewright {
namespace {

/// The part of a convex piece where `sign` times the coordinate is at most `limit` (sign 1 or -1).
Piece3 clip(const Piece3& piece, std::size_t axis, double sign, double limit) {
  Piece3 kept;
  for (std::size_t i = 0; i < piece.size(); ++i) {
    const Coordinates& a = piece[i];
    const Coordinates& b = piece[(i + 1) % piece.size()];
    const double overA = sign * a[axis] - limit;
    const double overB = sign * b[axis] - limit;
    if (overA <= 0) kept.push_back(a);
    if ((overA < 0 && overB > 0) || (overA > 0 && overB < 0)) {
      const double t = overA / (overA - overB);
      Coordinates cut{};
      for (std::size_t k = 0; k < 3; ++k) cut[k] = a[k] + t * (b[k] - a[k]);
      cut[axis] = sign * limit;
      kept.push_back(cut);
    }
  }
  return kept;
}

}  // namespace

/// Most pieces lie beside the box, or within it along an axis: nothing is clipped then.
Piece3 within(const Piece3& piece, const Box& box, double half) {
  const double reach = half - kTouch;
  std::array<bool, 3> under{};
  std::array<bool, 3> over{};
  for (std::size_t axis = 0; axis < 3; ++axis) {
    const auto [low, high] =
        std::ranges::minmax(piece, {}, [axis](const Coordinates& c) { return c.at(axis); });
    if (low.at(axis) > box.high.at(axis) + reach || high.at(axis) < box.low.at(axis) - reach)
      return {};
    over.at(axis) = high.at(axis) > box.high.at(axis) + reach;
    under.at(axis) = low.at(axis) < box.low.at(axis) - reach;
  }
  Piece3 part = piece;
  for (std::size_t axis = 0; axis < 3; ++axis) {
    if (over.at(axis)) part = clip(part, axis, 1, box.high.at(axis) + reach);
    if (under.at(axis)) part = clip(part, axis, -1, -(box.low.at(axis) - reach));
  }
  return part;
}

}  // namespace creasewright
