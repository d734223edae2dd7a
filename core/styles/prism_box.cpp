#include "styles/prism_box.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "styles/parameter_rows.h"
#include "styles/parts/frustum.h"
#include "styles/parts/prism_limits.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

Piece boxPiece(const Parameters& p, double caliper) {
  const int n = sidesOf(p);
  const double side = sideOf(n, p.mm("across") / 2);
  Frustum walls{n, side, side, p.mm("height"), p.mm("seam"), 0};
  walls.tab = baseTab(walls.deepestTab(), caliper);
  NetBuilder net({"walls-and-seam", "last-wall", "bottom-tabs", "base"});
  addFrustumWalls(net, walls, 2);
  addFrustumBase(net, walls, 3, 4);
  return {"box", net.take(), insideOf(walls)};
}

/// Degrees at the upper end of a lid's tab: it must fit into the gap between two walls of the net.
double lidTaper(int sides) { return std::min(45.0, 360.0 / sides - 5); }

double lidTab(double caliper) { return std::max(6.0, 10 * caliper); }

/// What the tapers of a tab take from the lid's depth.
double lidTabEnds(int sides, double tab) {
  return tab / std::tan(lidTaper(sides) * std::numbers::pi / 180) + tab / 3;
}

/// On the box in the middle, its top a caliper above the walls, its first wall before the box's
/// first. The box stands along the first wall's y axis.
Holding lidOnWalls(const Parameters& p, double lidSide, double caliper) {
  const int n = sidesOf(p);
  const double side = sideOf(n, p.mm("across") / 2);
  const Point3 corner{(side - lidSide) / 2, p.mm("height") + caliper,
                      apothemOf(n, side) - apothemOf(n, lidSide)};
  Holding held{Hold::Loose, "box"};
  held.place = Transform::frame(corner, {1, 0, 0}, {0, 0, 1});
  return held;
}

/// A wall on every edge of the top, each glued inside the next by a tab.
Piece lidPiece(const Parameters& p, double caliper) {
  const int n = sidesOf(p);
  const double side = sideOf(n, (p.mm("across") + p.mm("lid-wider")) / 2);
  const double depth = p.mm("lid-depth");
  const double tab = lidTab(caliper);
  const double inner = tab / std::tan(lidTaper(n) * std::numbers::pi / 180);
  NetBuilder net({"lid-tabs", "lid-walls"});
  net.root("top", regularPolygon(n, side));
  for (int k = 1; k <= n; ++k)
    net.hinge({"top", "edge-" + std::to_string(k)}, wallName(k), rectangle(side, depth), {90, 2});
  for (int k = 1; k <= n; ++k) {
    // A wall's frame has x against the top's edge, so its left edge lies beside the next wall.
    net.hinge({wallName(k), "left"}, wallName(k) + "/tab", trapezoid(depth, tab, inner, tab / 3),
              {360.0 / n, 1})
        .mate(wallName(k) + "/tab", wallName(k % n + 1), Face::Inside, Method::Glue, true)
        .showing({wallName(k)});
  }
  net.showing({"top"});
  Cavity cavity{"top", {side / 2, apothemOf(n, side), depth / 2}};
  cavity.high.z = depth;
  // What goes over a polygon is its flats: see the need for `lid-wider`.
  Piece piece{"lid", net.take(), cavity, GoesOver{"box", {}, {false, false, false}}};
  piece.held = lidOnWalls(p, side, caliper);
  return piece;
}

std::vector<Piece> buildPrism(const Parameters& p, const Workbench& bench) {
  return {boxPiece(p, bench.caliper.mm()), lidPiece(p, bench.caliper.mm())};
}

/// A wall takes half a caliper, a seam or tab inside it one more; the lid's walls and tabs lie
/// outside the box's walls.
std::vector<Need> prismNeeds(const Room& room, const Parameters& chosen, const Workbench& bench) {
  const Length t = bench.caliper;
  const double around = apothemFor(room, sidesOf(chosen));
  return {{"across", Axis::Length, Length::mm(2 * around + 1e-5) + t * 3},
          {"height", Axis::Height, room.eased(Axis::Height) + t * 2},
          {"lid-wider", Axis::Width, room.lidEase + t * 4}};
}

std::int64_t shallowestLid(const Parameters& p, const Workbench& m) {
  return Length::mm(lidTabEnds(sidesOf(p), lidTab(m.caliper.mm())) + 3).nm();
}

}  // namespace

Style prismBox() {
  return {
      .id = "prism-box-with-lid",
      .title = worded("styles", "Prism box with lid"),
      .summary = worded("styles", "A box of three to twelve sides with a lift-off lid."),
      .traits = {.suitsRound = true,
                 .difficulty = 2,
                 .suits = worded("styles", "Jars, candles, balls, sweets, anything round.")},
      .words =
          prismWords() +
          NetWords{.stages = {{"lid-tabs", worded("stages", "fold the lid's tabs"),
                               worded("stages", "Fold the tabs of the lid inwards.")},
                              {"lid-walls", worded("stages", "fold and glue the lid's walls"),
                               worded("stages", "Fold the walls of the lid down and press.")}}},
      .parameters =
          {sidesParameter(),
           measure("across", worded("styles", "Across the flats"),
                   worded("styles",
                          "From side to opposite side, or twice the way from the middle to a side. "
                          "The base's tabs must fit."))
               .standard(mm(90))
               .from(leastAcross())
               .to(kLargestSide),
           measure("height", worded("styles", "Height"),
                   worded("styles", "From the base to the rim. The smallest glue seam must fit."))
               .standard(mm(80))
               .from(leastPrismHeight())
               .to(kLargestSide),
           wallSeamParameter("across"),
           measure(
               "lid-wider", worded("styles", "Lid wider by"),
               worded("styles",
                      "Across the flats, lid against box: two cards on each side and the ease."))
               .standard(mm(3))
               .from(calipers(4))
               .to(mm(20)),
           measure("lid-depth", worded("styles", "Lid depth"),
                   worded("styles", "The tabs between its walls must fit."))
               .standard(mm(25))
               .from(shallowestLid)
               .to(greatest(shallowestLid, otherPlus("height")))},
      .needs = prismNeeds,
      .build = buildPrism,
  };
}

}  // namespace creasewright
