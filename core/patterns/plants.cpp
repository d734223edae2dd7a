#include <cmath>
#include <numbers>

#include "patterns/families.h"
#include "patterns/shapes.h"

namespace creasewright {
namespace {

/// Moves the shapes of a sprig to their places on both halves of the repeat, the second mirrored.
void lay(const std::vector<Polygon>& shapes, double height, PatternLayer& into) {
  for (const Polygon& shape : shapes) {
    into.shapes.push_back(shape);
    into.shapes.push_back(laid(mirrored(shape), {0.5, height / 2}));
  }
}

/// A point of the stem, and the way it grows there.
struct Growth {
  Point at;
  Point along;
};

Growth growth(const Polyline& stem, double share) {
  const auto last = static_cast<double>(stem.size() - 1);
  const auto i = static_cast<std::size_t>(std::min(std::floor(share * last), last - 1));
  const Point step = stem[i + 1] - stem[i];
  return {stem[i] + step * (share * last - static_cast<double>(i)), unit(step)};
}

Point turned(Point v, double degrees) {
  const double r = degrees * std::numbers::pi / 180;
  return v * std::cos(r) + turnLeft(v) * std::sin(r);
}

}  // namespace

/// Leaves as they hang, stalks down, each lit from one side.
PatternKind leaves() {
  constexpr double kHigh = 1;
  PatternKind out{"leaves",
                  worded("patterns", "Leaves"),
                  Turns::None,
                  mm(48),
                  {{0xF7, 0xF3, 0xE7}, {0x5D, 0x7F, 0x5E}, {0x8D, 0xA8, 0x7C}, {0xC9, 0x97, 0x55}}};
  out.height = kHigh;
  PatternLayer dark{1, -1, false, {}};
  PatternLayer pale{2, -1, false, {}};
  PatternLayer berries{3, -1, false, {}};
  Chance chance(8);
  const std::vector<Strewn> places = strewn(std::vector<double>(17, 0.104), 0.004, kHigh, chance);
  for (const Strewn& one : places) {
    const double tilt = chance.between(-38, 38);
    const double size = chance.between(0.86, 1.08);
    const auto add = [&](PatternLayer& layer, const Polygon& shape) {
      layer.shapes.push_back(laid(shape, one.at, tilt, size));
    };
    const Point stalk{0, -0.085};
    const Point tip{0, 0.115};
    for (const Polygon& shape : joinedShapes(
             {leaf(stalk, tip, 0.26, LeafPart::Left), bar({0, -0.125}, {0, -0.07}, 0.012, true)}))
      add(dark, shape);
    add(pale, laid(leaf(stalk, tip, 0.26, LeafPart::Right), {0.006, 0}));
  }
  for (const Strewn& one : strewn(std::vector<double>(18, 0.015), 0.024, kHigh, chance, places))
    berries.shapes.push_back(disc(one.at, one.reach, 16));
  out.layers = {dark, pale, berries};
  return out;
}

/// A twig with pairs of leaves and three berries, in rows half a step apart.
PatternKind sprigs() {
  constexpr double kHigh = 1.06;
  PatternKind out{"sprigs",
                  worded("patterns", "Sprigs"),
                  Turns::None,
                  mm(30),
                  {{0xF4, 0xE9, 0xDF}, {0x5B, 0x74, 0x62}, {0xB9, 0x55, 0x4F}}};
  out.height = kHigh;
  const Polyline stem = curve({-0.06, -0.33}, {0.07, -0.08}, {0.0, 0.17}, 14);
  std::vector<Polygon> green{stroke(stem, 0.018)};
  for (const auto& [share, size] :
       {std::pair{0.24, 0.2}, {0.46, 0.19}, {0.66, 0.165}, {0.84, 0.13}}) {
    const Growth node = growth(stem, share);
    for (const double side : {1.0, -1.0}) {
      const Point away = turned(node.along, side * 50);
      green.push_back(leaf(node.at, node.at + away * size, 0.2));
    }
  }
  std::vector<Polygon> berries;
  for (const double side : {0.0, 32.0, -32.0}) {
    const Point away = turned(growth(stem, 1).along, side);
    const Point at = stem.back() + away * (side == 0 ? 0.15 : 0.11);
    green.push_back(stroke({stem.back() - away * 0.01, at}, 0.013));
    berries.push_back(disc(at, 0.036, 20));
  }
  PatternLayer leavesOf{1, -1, false, {}};
  PatternLayer berriesOf{2, -1, false, {}};
  lay(joinedShapes(green), kHigh, leavesOf);
  lay(berries, kHigh, berriesOf);
  out.layers = {leavesOf, berriesOf};
  return out;
}

}  // namespace creasewright
