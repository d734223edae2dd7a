#include "folding/cavity/cavity_parts.h"

namespace creasewright {
namespace {

/// The part of a convex piece where `sign` times the coordinate is at most `limit` (sign 1 or -1).
Piece3 clip(const Piece3& piece, int axis, double sign, double limit) {
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
      for (int k = 0; k < 3; ++k) cut[k] = a[k] + t * (b[k] - a[k]);
      cut[axis] = sign * limit;
      kept.push_back(cut);
    }
  }
  return kept;
}

}  // namespace

Piece3 within(Piece3 piece, const Box& box, double half) {
  const double reach = half - kTouch;
  for (int axis = 0; axis < 3 && !piece.empty(); ++axis) {
    piece = clip(piece, axis, 1, box.high[axis] + reach);
    piece = clip(piece, axis, -1, -(box.low[axis] - reach));
  }
  return piece;
}

}  // namespace creasewright
