#include "styles/petal_prism.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "styles/parameter_rows.h"
#include "styles/parts/frustum.h"
#include "styles/parts/prism_limits.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

enum Stage { WallsAndSeam = 1, LastWall, BottomTabs, Base, Petals };

/// Reaches past the middle and over the next petal: at the crease it opens wider than half the
/// polygon's corner, and less than the corner itself.
Shape petal(int sides, double side) {
  const double corner = 180 - 360.0 / sides;
  const double angle = std::min(0.75 * corner, 85.0) * std::numbers::pi / 180;
  const double reach = 1.12 * apothemOf(sides, side);
  const double inset = std::min(reach / std::tan(angle), side * 0.45);
  return trapezoid(side, reach, inset, inset);
}

std::vector<Piece> buildPetals(const Parameters& p, const Workbench& bench) {
  const int n = sidesOf(p);
  const double side = sideOf(n, p.mm("across") / 2);
  Frustum walls{n, side, side, p.mm("height"), p.mm("seam"), 0};
  walls.tab = baseTab(walls.deepestTab(), bench.caliper.mm());
  NetBuilder net({"walls-and-seam", "last-wall", "bottom-tabs", "base", "petals"});
  addFrustumWalls(net, walls, LastWall);
  addFrustumBase(net, walls, BottomTabs, Base);
  for (int k = 1; k <= n; ++k)
    net.hinge({wallName(k), "top"}, wallName(k) + "/petal", petal(n, side), {90, Petals})
        .showing({wallName(k) + "/petal"});
  net.bends(Petals, BendCode::PetalsOverlap);
  Cavity cavity = insideOf(walls);
  cavity.high.z = 1e4;  // the petals end it
  return {{"box", net.take(), cavity}};
}

/// As in a prism box; of the petals two lie over one another.
std::vector<Need> petalNeeds(const Room& room, const Parameters& chosen, const Workbench& bench) {
  const Length t = bench.caliper;
  const double around = apothemFor(room, sidesOf(chosen));
  return {{"across", Axis::Length, Length::mm(2 * around + 1e-5) + t * 3},
          {"height", Axis::Height, room.eased(Axis::Height) + t * 4}};
}

}  // namespace

Style petalPrism() {
  return {
      .id = "petal-prism-box",
      .title = worded("styles", "Petal prism box"),
      .summary = worded(
          "styles",
          "A box of three to twelve sides; its petals overlap in a ring and hold each other."),
      .traits = {.suitsRound = true,
                 .difficulty = 2,
                 .suits = worded("styles", "Jars, balls, sweets, soap, anything round.")},
      .words =
          prismWords() +
          NetWords{.stages = {{"petals", worded("stages", "close the petals one over the other")}},
                   .panels = {{"petal", worded("panels", "petal")}}},
      .parameters = {sidesParameter(),
                     measure("across", worded("styles", "Across the flats"),
                             worded("styles",
                                    "From side to opposite side, or twice the way from the middle "
                                    "to a side. The base's tabs must fit."))
                         .standard(mm(80))
                         .from(leastAcross())
                         .to(kLargestSide),
                     measure(
                         "height", worded("styles", "Height"),
                         worded("styles",
                                "From the base to the petals. The smallest glue seam must fit."))
                         .standard(mm(80))
                         .from(leastPrismHeight())
                         .to(kLargestSide),
                     wallSeamParameter("across")},
      .needs = petalNeeds,
      .build = buildPetals,
  };
}

}  // namespace creasewright
