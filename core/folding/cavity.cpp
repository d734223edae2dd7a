#include "folding/cavity.h"

#include <algorithm>
#include <optional>

#include "folding/layers.h"
#include "folding/triangulate.h"

namespace creasewright {
namespace {

constexpr double kTouch = 1e-7;  // mm; card that only touches the cuboid is not in its way

using Coordinates = std::array<double, 3>;
using Piece3 = std::vector<Coordinates>;  // convex, plane

Coordinates coordinates(Point3 p) { return {p.x, p.y, p.z}; }
Point3 point(const Coordinates& c) { return {c[0], c[1], c[2]}; }

struct Box {
  Coordinates low;
  Coordinates high;
  [[nodiscard]] double volume() const {
    return (high[0] - low[0]) * (high[1] - low[1]) * (high[2] - low[2]);
  }
};

std::vector<Piece3> obstacles(const Net& net, const Pose& folded, const Transform& toFrame,
                              double caliper) {
  const std::vector<Point3> offsets = layerOffsets(net, folded, caliper, caliper + 0.05);
  std::vector<Piece3> pieces;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Transform place = toFrame.after(Transform::translation(offsets[i])).after(folded[i]);
    for (const auto& triangle : triangulate(net.panels[i].outline)) {
      Piece3& piece = pieces.emplace_back();
      for (const Point& corner : triangle) piece.push_back(coordinates(place.apply(corner)));
    }
  }
  return pieces;
}

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

/// The part of `piece` that comes within half a caliper of the box's prism along `axis`.
Piece3 inPrism(Piece3 piece, const Box& box, int axis, double half) {
  for (int other = 0; other < 3; ++other) {
    if (other == axis || piece.empty()) continue;
    const double reach = std::max(half - kTouch, kTouch - (box.high[other] - box.low[other]) / 2);
    piece = clip(piece, other, 1, box.high[other] + reach);
    piece = clip(piece, other, -1, -(box.low[other] - reach));
  }
  return piece;
}

/// Widens `box` along one axis up to the nearest card; false when card is in the box itself.
bool grow(Box& box, int axis, const std::vector<Piece3>& pieces, const Box& limits, double half) {
  const double seed = box.low[axis];
  double low = limits.low[axis];
  double high = limits.high[axis];
  for (const Piece3& whole : pieces) {
    const Piece3 piece = inPrism(whole, box, axis, half);
    if (piece.empty()) continue;
    const auto along = [axis](const Coordinates& a, const Coordinates& b) {
      return a[axis] < b[axis];
    };
    const auto [first, last] = std::minmax_element(piece.begin(), piece.end(), along);
    const double from = (*first)[axis] - half;
    const double to = (*last)[axis] + half;
    if (from < seed && to > seed) return false;
    if (from >= seed) {
      high = std::min(high, from);
    } else {
      low = std::max(low, to);
    }
  }
  box.low[axis] = std::min(low, seed);
  box.high[axis] = std::max(high, seed);
  return true;
}

}  // namespace

CavityBox cavityBox(const Net& net, const Pose& folded, const Cavity& cavity, double caliper) {
  const Coordinates seed = coordinates(cavity.seed);
  Box best{seed, seed};
  const std::optional<int> panel = net.find(cavity.panel);
  if (!panel || folded.size() < net.panels.size()) return {cavity.seed, cavity.seed};
  const Box limits{coordinates(cavity.low), coordinates(cavity.high)};
  const std::vector<Piece3> pieces = obstacles(net, folded, folded[*panel].inverse(), caliper);
  std::array<int, 3> order{0, 1, 2};
  do {
    Box box{seed, seed};
    bool free = true;
    for (const int axis : order) free = free && grow(box, axis, pieces, limits, caliper / 2);
    if (free && box.volume() > best.volume() * (1 + 1e-9)) best = box;
  } while (std::next_permutation(order.begin(), order.end()));
  return {point(best.low), point(best.high)};
}

CavitySize measureCavity(const Net& net, const Pose& folded, const Cavity& cavity, double caliper) {
  const CavityBox box = cavityBox(net, folded, cavity, caliper);
  const Coordinates size = coordinates(box.high - box.low);
  return {size[cavity.axes[0]], size[cavity.axes[1]], size[cavity.axes[2]]};
}

}  // namespace creasewright
