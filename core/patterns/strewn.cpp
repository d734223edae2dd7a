#include <algorithm>
#include <cmath>
#include <numbers>

#include "patterns/families.h"
#include "patterns/shapes.h"

namespace creasewright {
namespace {

/// Layers 1 to `inks`, each with no shapes yet.
std::vector<PatternLayer> plainLayers(int inks) {
  std::vector<PatternLayer> out;
  for (int i = 1; i <= inks; ++i) out.push_back({i, -1, false, {}});
  return out;
}

std::vector<double> many(std::initializer_list<std::pair<int, double>> kinds) {
  std::vector<double> out;
  for (const auto& [count, reach] : kinds) out.insert(out.end(), count, reach);
  return out;
}

/// An arm of a snow crystal upwards, `reach` long, with two pairs of branches.
std::vector<Polygon> arm(double reach) {
  const double thin = reach * 0.085;
  std::vector<Polygon> out{bar({0, 0}, {0, reach}, thin, true)};
  for (const auto& [at, length] : {std::pair{0.5, 0.26}, {0.73, 0.2}})
    for (const double side : {1.0, -1.0}) {
      const Point from{0, at * reach};
      const double slope = std::numbers::pi / 3;
      const Point by{side * std::sin(slope), std::cos(slope)};
      out.push_back(bar(from, from + by * (length * reach), thin, true));
    }
  return out;
}

std::vector<Polygon> crystal(double reach) {
  std::vector<Polygon> out{disc({0, 0}, reach * 0.16, 6)};
  for (int i = 0; i < 6; ++i)
    for (const Polygon& part : arm(reach)) out.push_back(laid(part, {}, 60.0 * i));
  return joinedShapes(out);
}

/// A chip of stone within a circle: corners at uneven angles and distances.
Polygon chip(double reach, Chance& chance) {
  const int corners = static_cast<int>(chance.between(5, 7.99));
  Polygon out;
  for (int i = 0; i < corners; ++i) {
    const double turn = 2 * std::numbers::pi * (i + chance.between(-0.3, 0.3)) / corners;
    const double far = reach * chance.between(0.72, 1);
    out.push_back({far * std::cos(turn), far * std::sin(turn)});
  }
  return convexHull(out);
}

}  // namespace

PatternKind confetti() {
  PatternKind out{"confetti",
                  worded("patterns", "Confetti"),
                  Turns::Any,
                  mm(40),
                  {{0xFB, 0xF7, 0xEF}, {0xE0, 0x8A, 0x76}, {0x6F, 0xA3, 0x9C}, {0xE3, 0xB2, 0x4C}}};
  out.layers = plainLayers(3);
  Chance chance(11);
  int n = 0;
  for (const Strewn& one : strewn(many({{34, 0.052}, {46, 0.024}}), 0.018, 1, chance)) {
    PatternLayer& layer = out.layers[static_cast<std::size_t>(n) % 3];
    const double turn = chance.between(0, 360);
    const double r = one.reach;
    if (r < 0.04)
      layer.shapes.push_back(disc(one.at, r * 0.8, 16));
    else if (n / 3 % 3 == 0)
      layer.shapes.push_back(laid(star(3, r, r / 2), one.at, turn, 0.9));
    else
      layer.shapes.push_back(laid(bar({0, -r * 0.7}, {0, r * 0.7}, r * 0.55, true), one.at, turn));
    ++n;
  }
  return out;
}

PatternKind stars() {
  PatternKind out{"stars",
                  worded("patterns", "Stars"),
                  Turns::Any,
                  mm(44),
                  {{0x2A, 0x3A, 0x5C}, {0xF3, 0xDF, 0xA6}, {0xD9, 0xA4, 0x41}}};
  out.layers = plainLayers(2);
  Chance chance(5);
  for (const Strewn& one : strewn(many({{9, 0.085}, {14, 0.05}, {40, 0.018}}), 0.03, 1, chance)) {
    const double turn = chance.between(0, 360);
    const bool tiny = one.reach < 0.03;
    const bool gold = one.reach > 0.04 && one.reach < 0.07;
    out.layers[gold ? 1 : 0].shapes.push_back(
        tiny ? disc(one.at, 0.011, 12) : laid(star(5, one.reach, one.reach * 0.45), one.at, turn));
  }
  return out;
}

PatternKind snow() {
  PatternKind out{"snow",
                  worded("patterns", "Snow"),
                  Turns::Any,
                  mm(50),
                  {{0x3E, 0x5E, 0x7E}, {0xF6, 0xF8, 0xF6}, {0xA8, 0xC6, 0xD8}}};
  out.layers = plainLayers(2);
  Chance chance(23);
  for (const Strewn& one : strewn(many({{6, 0.12}, {9, 0.07}, {44, 0.014}}), 0.025, 1, chance)) {
    const double turn = chance.between(0, 60);
    PatternLayer& layer = out.layers[one.reach > 0.1 || one.reach < 0.03 ? 0 : 1];
    if (one.reach < 0.03) {
      layer.shapes.push_back(disc(one.at, one.reach, 14));
      continue;
    }
    for (const Polygon& shape : crystal(one.reach))
      layer.shapes.push_back(laid(shape, one.at, turn));
  }
  return out;
}

PatternKind terrazzo() {
  PatternKind out{"terrazzo",
                  worded("patterns", "Terrazzo"),
                  Turns::Any,
                  mm(60),
                  {{0xF3, 0xEE, 0xE4}, {0xC9, 0x8A, 0x72}, {0x7E, 0x95, 0x8B}, {0x4B, 0x54, 0x5C}}};
  out.layers = plainLayers(3);
  Chance chance(31);
  int n = 0;
  for (const Strewn& one :
       strewn(many({{15, 0.085}, {40, 0.046}, {90, 0.024}, {160, 0.011}}), 0.014, 1, chance))
    out.layers[static_cast<std::size_t>(n++) % 3].shapes.push_back(
        laid(chip(one.reach, chance), one.at));
  return out;
}

}  // namespace creasewright
