#include "styles/pyramid_box.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "styles/parameter_rows.h"
#include "styles/parts/frustum.h"
#include "styles/parts/prism_limits.h"
#include "styles/parts/punched_hole.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

constexpr double kTip = 10;        // mm, width of a wall at its upper end
constexpr double kHole = 4;        // mm across
constexpr double kHoleBelow = 6;   // mm from the upper end to the middle of the hole
constexpr double kLeastSide = 24;  // mm

double tan(double degrees) { return std::tan(degrees * std::numbers::pi / 180); }

Frustum pyramidOf(const Parameters& p) {
  const int n = sidesOf(p);
  return {n, sideOf(n, p.mm("across") / 2), kTip, p.mm("height"), 0, 0};
}

Shape wallShape(const Frustum& f) {
  Shape wall = frustumWall(f);
  wall.openings = {punchedHole({f.bottom / 2, f.slant() - kHoleBelow}, kHole)};
  return wall;
}

/// Lies inside the next wall, unglued, and closes the gap between the two. Flat, it stays in the
/// gap beside its own wall.
Shape gapFlap(const Frustum& f) {
  const double corner = 90 + f.fanAngle() / 2;  // of a wall, at the base
  const double gap = 180 + 360.0 / f.sides - 2 * corner;
  const double depth = std::min(8.0, f.ridge() / 6);
  const double atBase = depth / tan(std::min({45.0, gap - 3, corner - 2}));
  return trapezoid(f.ridge(), depth, std::min(atBase, f.ridge() / 2), depth / 2);
}

std::vector<Piece> buildPyramid(const Parameters& p, const Workbench&) {
  const Frustum f = pyramidOf(p);
  NetBuilder net({"gap-flaps", "walls-up"});
  net.root("base", regularPolygon(f.sides, f.bottom));
  const Shape wall = wallShape(f);
  for (int k = 1; k <= f.sides; ++k)
    net.hinge({"base", "edge-" + std::to_string(k)}, wallName(k), wall, {180 - f.slope(), 2});
  for (int k = 1; k <= f.sides; ++k) {
    // The left edge lies beside the next wall; the flap's frame starts at the base.
    net.hinge({wallName(k), "left"}, wallName(k) + "/gap-flap", gapFlap(f), {f.seamFold(), 1})
        .mate(wallName(k) + "/gap-flap", wallName(k % f.sides + 1), Face::Inside, Method::Rest,
              true)
        .showing({wallName(k)});
  }
  net.bends(2, BendCode::TuckSlidesIn).showing({"base"});  // each flap behind the next wall
  Cavity cavity{
      "base", {f.bottom / 2, apothemOf(f.sides, f.bottom), std::min(f.height, p.mm("across")) / 6}};
  return {{"box", net.take(), cavity}};
}

/// At half its height a pyramid is half as wide as its base: there the product's top may be.
/// Leaning walls and the flaps inside them take up to four calipers.
std::vector<Need> pyramidNeeds(const Room& room, const Parameters& chosen, const Workbench& bench) {
  const double t = bench.caliper.mm();
  const double around = apothemFor(room, sidesOf(chosen)) + 4 * t;
  const double top = room.eased(Axis::Height).mm() + 2 * t;
  return {{"across", Axis::Length, Length::mm(4 * around)},
          {"height", Axis::Height, Length::mm(std::max(2 * top, 1.2 * around))}};
}

std::int64_t leastPyramid(const Parameters& p, const Workbench&) {
  return Length::mm(2 * apothemOf(sidesOf(p), kLeastSide)).nm();
}

}  // namespace

Style pyramidBox() {
  return {
      .id = "pyramid-box",
      .title = worded("styles", "Pyramid box"),
      .summary = worded("styles", "Walls lean together over the product and are tied at the tip."),
      .traits = {.suitsRound = true,
                 .difficulty = 1,
                 .suits = worded("styles",
                                 "Truffles, favours, small surprises; the ribbon is the lock.")},
      .words = {.stages = {{"gap-flaps", worded("stages", "fold the gap flaps"),
                            worded("stages", "Fold the flaps between the walls inwards.")}},
                .panels = {{"gap-flap", worded("panels", "gap flap")}}},
      .parameters = {sidesParameter(),
                     measure("across", worded("styles", "Across the base"),
                             worded("styles",
                                    "From side to opposite side, or twice the way from the middle "
                                    "to a side. Every wall is at least 24 mm wide."))
                         .standard(mm(90))
                         .from(leastPyramid)
                         .to(kLargestSide),
                     measure("height", worded("styles", "Height"),
                             worded("styles",
                                    "From the base to the tip; at least a quarter of the base, so "
                                    "that the walls stand."))
                         .standard(mm(90))
                         .from(greatest(mm(30), partOf("across", 4)))
                         .to(kLargestSide)},
      .needs = pyramidNeeds,
      .build = buildPyramid,
  };
}

}  // namespace creasewright
