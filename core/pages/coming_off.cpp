#include "pages/coming_off.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "pages/reach.h"

namespace creasewright {
namespace {

constexpr double kSquare = 0.95;  // cosine

/// Whether a panel of the piece lies square to an axis before or behind the middle of the other.
struct Ends {
  bool low = false;
  bool high = false;
};

Ends endsOf(const BuiltPiece& piece, const BuiltPiece& other, Point3 axis) {
  Reach about;
  about.take(other.net, other.folded, {}, axis);
  Ends ends;
  for (std::size_t i = 0; i < piece.net.panels.size(); ++i) {
    const Transform place = piece.held->place->after(piece.folded[i]);
    if (std::abs(dot(place.normal(), axis)) < kSquare) continue;
    (dot(place.apply(Point{}), axis) < about.middle() ? ends.low : ends.high) = true;
  }
  return ends;
}

/// The middles of the slots along a slotted piece, from its left end.
std::vector<double> slotsOf(const Panel& panel) {
  std::vector<double> slots;
  const std::size_t n = panel.outline.size();
  // Of the three edges of a slot the one at its end is level.
  for (std::size_t i = 0; i < n; ++i) {
    const Point a = panel.outline[i];
    const Point b = panel.outline[(i + 1) % n];
    if (panel.edges[i] == "slot" && std::abs(a.y - b.y) < 1e-9) slots.push_back((a.x + b.x) / 2);
  }
  std::ranges::sort(slots);
  return slots;
}

/// The piece that is slotted into this one, or that this one is slotted into.
const BuiltPiece* crossing(const BuiltPiece& piece, std::span<const BuiltPiece* const> pieces) {
  const auto isSlotted = [](const BuiltPiece& one, const BuiltPiece& other) {
    return one.held && one.held->by == Hold::Slot && one.held->to == other.name;
  };
  const auto found = std::ranges::find_if(pieces, [&](const BuiltPiece* each) {
    return isSlotted(*each, piece) || isSlotted(piece, *each);
  });
  return found == pieces.end() ? nullptr : *found;
}

}  // namespace

Point3 wayOff(const BuiltPiece& piece, const BuiltPiece& other, Point3 up) {
  std::array<Point3, 3> axes{Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}};
  std::ranges::stable_sort(axes, std::ranges::greater(),
                           [&](Point3 axis) { return std::abs(dot(axis, up)); });
  for (Point3 axis : axes) {
    if (dot(axis, up) < -1e-9) axis = axis * -1;
    const Ends ends = endsOf(piece, other, axis);
    const bool upwards = dot(axis, up) > kSquare;
    if (!ends.low && !ends.high) return upwards ? axis : axis * -1;
    if (!ends.low) return axis;
    if (!ends.high) return axis * -1;
  }
  return up;
}

bool comesOffAlong(const BuiltPiece& piece, const BuiltPiece& other, Point3 way) {
  return !endsOf(piece, other, way).low;
}

std::vector<Transform> copiesOf(const BuiltPiece& piece,
                                std::span<const BuiltPiece* const> pieces) {
  std::vector<Transform> copies;
  const BuiltPiece* other = piece.count > 1 ? crossing(piece, pieces) : nullptr;
  if (other == nullptr) return copies;
  const std::vector<double> slots = slotsOf(other->net.panels.front());
  // The other's length runs square to this one's panel.
  const Holding& held = piece.held ? *piece.held : *other->held;
  const Point3 along =
      piece.held ? held.place->inverse().turn({1, 0, 0}) : held.place->turn({1, 0, 0});
  for (std::size_t k = 1; k < slots.size(); ++k)
    copies.push_back(Transform::translation(along * (slots[k] - slots.front())));
  return copies;
}

}  // namespace creasewright
