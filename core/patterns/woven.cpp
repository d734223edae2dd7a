#include <cmath>

#include "patterns/families.h"
#include "patterns/shapes.h"

namespace creasewright {

/// Planks three times as long as wide, laid at 45 degrees: with a plank's width as unit they are
/// the same again after (1, 1) and (3, -3), which lie upright and level once turned.
PatternKind herringbone() {
  constexpr double kLong = 3;
  constexpr double kJoint = 0.07;
  PatternKind out{"herringbone",
                  worded("patterns", "Herringbone"),
                  Turns::Half,
                  mm(18),
                  {{0xF4, 0xEC, 0xDC}, {0xB7, 0x9A, 0x79}, {0xD6, 0xC2, 0xA4}}};
  out.height = 1 / kLong;
  const double size = 1 / (kLong * std::sqrt(2.0));
  const auto plank = [&](double left, double bottom, double right, double top) {
    return laid(rectangle(left + kJoint, bottom + kJoint, right - kJoint, top - kJoint), {}, 45,
                size);
  };
  out.layers = {{1, -1, false, {plank(0, 0, kLong, 1)}},
                {2, -1, false, {plank(kLong, 1 - kLong, kLong + 1, 1)}}};
  return out;
}

/// A trellis: double slats across one another, a rosette where they cross and one in each field.
PatternKind lattice() {
  constexpr double kHigh = 1.4;
  constexpr double kSlat = 0.028;
  constexpr double kApart = 0.045;
  PatternKind out{"lattice",
                  worded("patterns", "Lattice"),
                  Turns::Half,
                  mm(20),
                  {{0xF7, 0xF3, 0xE8}, {0x6F, 0x8F, 0x7B}, {0xC2, 0x8E, 0x4A}}};
  out.height = kHigh;
  PatternLayer slats{1, -1, true, {}};
  const double turn = std::atan2(kHigh, 1) * 180 / std::numbers::pi;
  const double half = std::hypot(1, kHigh) / 2 + kOverlap;
  for (const double degrees : {turn, -turn})
    for (const double off : {kApart, -kApart})
      slats.shapes.push_back(laid(rectangle(-half, off - kSlat / 2, half, off + kSlat / 2),
                                  {0.5, kHigh / 2}, degrees));
  PatternLayer clear{0, -1, false, {}};
  PatternLayer crossings{2, -1, false, {}};
  PatternLayer fields{2, -1, false, {}};
  for (const Point at : {Point{0, 0}, Point{0.5, kHigh / 2}}) {
    clear.shapes.push_back(disc(at, 0.115));
    crossings.shapes.push_back(disc(at, 0.075));
  }
  for (const Point at : {Point{0.5, 0}, Point{0, kHigh / 2}})
    for (int i = 0; i < 4; ++i)
      fields.shapes.push_back(laid(leaf({0, 0.02}, {0, 0.13}, 0.22), at, 90.0 * i));
  out.layers = {slats, clear, crossings, fields};
  return out;
}

/// Round scales in rows, each over the gap of the row above it, with rings.
PatternKind scallops() {
  constexpr double kRow = 0.25;
  PatternKind out{"scallops",
                  worded("patterns", "Scallops"),
                  Turns::None,
                  mm(18),
                  {{0xF6, 0xF1, 0xE6}, {0x3F, 0x6C, 0x7D}, {0xC9, 0xA2, 0x5E}}};
  out.height = 2 * kRow;
  constexpr int kRound = 72;
  const auto seen = [](Point centre, double outer, double inner) {
    std::vector<Polygon> over;
    for (const Point below : {Point{0.5, -kRow}, Point{-0.5, -kRow}, Point{0, -2 * kRow}})
      over.push_back(disc(centre + below, 0.5, kRound));
    if (inner > 0) over.push_back(disc(centre, inner, kRound));
    return outside(disc(centre, outer, kRound), over);
  };
  PatternLayer rings{1, -1, false, {}};
  PatternLayer hearts{2, -1, false, {}};
  for (const Point centre : {Point{0, 0}, Point{0.5, kRow}}) {
    for (const auto& [outer, inner] : {std::pair{0.475, 0.425}, {0.375, 0.325}, {0.275, 0.225}})
      for (Polygon& shape : seen(centre, outer, inner)) rings.shapes.push_back(std::move(shape));
    for (Polygon& shape : seen(centre, 0.175, 0)) hearts.shapes.push_back(std::move(shape));
  }
  out.layers = {rings, hearts};
  return out;
}

}  // namespace creasewright
