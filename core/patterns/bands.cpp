#include <cmath>
#include <numbers>

#include "patterns/families.h"
#include "patterns/shapes.h"

namespace creasewright {
namespace {

/// Up and down the whole repeat.
Polygon upright(double left, double right) {
  return rectangle(left, -kOverlap, right, 1 + kOverlap);
}

Polygon level(double bottom, double top) { return rectangle(-kOverlap, bottom, 1 + kOverlap, top); }

/// A zigzag of 45 degrees about a height, `width` measured upwards.
Polygon zigzag(double height, double width) {
  constexpr double kRise = 0.25;
  const Polyline run{{-0.5 - kOverlap, height + kRise - kOverlap},
                     {-0.5, height + kRise},
                     {0, height - kRise},
                     {0.5, height + kRise},
                     {0.5 + kOverlap, height + kRise - kOverlap}};
  Polygon out;
  for (const Point& p : run) out.push_back(p - Point{0, width / 2});
  for (auto p = run.rbegin(); p != run.rend(); ++p) out.push_back(*p + Point{0, width / 2});
  return out;
}

Polygon wave(double height, double width) {
  constexpr int kSteps = 36;
  constexpr double kRise = 0.085;
  Polyline run;
  for (int i = -1; i <= kSteps + 1; ++i) {
    const double x = static_cast<double>(i) / kSteps;
    run.push_back({x, height + kRise * std::sin(2 * std::numbers::pi * x)});
  }
  return stroke(run, width);
}

/// A stripe of a tartan's sett.
struct Stripe {
  double from = 0;
  double to = 0;
  int ink = 0;
};

/// The same to both sides of its middle, as most setts are.
std::vector<Stripe> sett() {
  const std::vector<Stripe> half{{0, 0.015, 3},   {0.015, 0.1, 0},  {0.1, 0.13, 1},
                                 {0.13, 0.15, 0}, {0.15, 0.33, 1},  {0.33, 0.35, 0},
                                 {0.35, 0.38, 1}, {0.38, 0.475, 0}, {0.475, 0.5, 2}};
  std::vector<Stripe> whole;
  for (const Stripe& s : half) {
    whole.push_back(s);
    whole.push_back({1 - s.to, 1 - s.from, s.ink});
  }
  return whole;
}

}  // namespace

PatternKind stripes() {
  PatternKind out{"stripes",
                  worded("patterns", "Stripes"),
                  Turns::Half,
                  mm(14),
                  {{0xF8, 0xF2, 0xE4}, {0x8F, 0xA8, 0x8C}, {0xB8, 0x5C, 0x3E}}};
  out.layers = {{1, -1, true, {upright(-0.22, 0.22)}},
                {2, -1, true, {upright(0.345, 0.37), upright(0.63, 0.655)}}};
  return out;
}

PatternKind gingham() {
  PatternKind out{"gingham",
                  worded("patterns", "Gingham"),
                  Turns::Quarter,
                  mm(10),
                  {{0xFB, 0xF8, 0xF0}, {0x5B, 0x86, 0xB8}}};
  out.layers = {{1, 0, true, {upright(0.25, 0.75), level(0.25, 0.75)}},
                {1, -1, false, {rectangle(0.25, 0.25, 0.75, 0.75)}}};
  return out;
}

PatternKind tartan() {
  PatternKind out{"tartan",
                  worded("patterns", "Tartan"),
                  Turns::Quarter,
                  mm(40),
                  {{0x2E, 0x5A, 0x4B}, {0x22, 0x38, 0x57}, {0xB5, 0x3A, 0x2E}, {0xF1, 0xE3, 0xBE}}};
  const int inks = static_cast<int>(out.colours.size());
  for (int a = 0; a < inks; ++a)
    for (int b = a == 0 ? 1 : a; b < inks; ++b) {
      PatternLayer layer{b, a == b ? -1 : a, true, {}};
      for (const Stripe& x : sett())
        for (const Stripe& y : sett())
          if ((x.ink == a && y.ink == b) || (x.ink == b && y.ink == a))
            layer.shapes.push_back(rectangle(x.from, y.from, x.to, y.to));
      out.layers.push_back(std::move(layer));
    }
  return out;
}

PatternKind chevron() {
  PatternKind out{"chevron",
                  worded("patterns", "Chevron"),
                  Turns::Half,
                  mm(18),
                  {{0xFA, 0xF4, 0xE6}, {0xC9, 0x7B, 0x63}, {0x2F, 0x4A, 0x5C}}};
  out.height = 0.5;
  out.layers = {{1, -1, true, {zigzag(0, 0.2)}}, {2, -1, true, {zigzag(0.25, 0.05)}}};
  return out;
}

PatternKind waves() {
  PatternKind out{"waves",
                  worded("patterns", "Waves"),
                  Turns::Half,
                  mm(22),
                  {{0xEE, 0xF3, 0xEF}, {0x4F, 0x86, 0x93}, {0x9C, 0xC3, 0xC4}}};
  out.height = 0.36;
  out.layers = {{1, -1, true, {wave(0, 0.075)}}, {2, -1, true, {wave(0.18, 0.1)}}};
  return out;
}

}  // namespace creasewright
