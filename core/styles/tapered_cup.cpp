#include "styles/tapered_cup.h"

#include "styles/parameter_rows.h"
#include "styles/parts/frustum.h"
#include "styles/parts/prism_limits.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

std::vector<Piece> buildCup(const Parameters& p, const Workbench& bench) {
  const int n = sidesOf(p);
  const double bottom = p.mm("across");
  Frustum walls{n,
                sideOf(n, bottom / 2),
                sideOf(n, (bottom + p.mm("flare")) / 2),
                p.mm("height"),
                p.mm("seam"),
                0};
  walls.tab = baseTab(walls.deepestTab(), bench.caliper.mm());
  NetBuilder net({"walls-and-seam", "last-wall", "bottom-tabs", "base"});
  addFrustumWalls(net, walls, 2);
  addFrustumBase(net, walls, 3, 4);
  return {{"cup", net.take(), insideOf(walls)}};
}

/// The product stands on the base, where the cup is narrowest. A wall takes half a caliper, a seam
/// or tab inside it one more; leaning walls a little more than upright ones.
std::vector<Need> cupNeeds(const Room& room, const Parameters& chosen, const Workbench& bench) {
  const Length t = bench.caliper;
  const double around = apothemFor(room, sidesOf(chosen));
  return {{"across", Axis::Length, Length::mm(2 * around + 1e-5) + t * 4},
          {"height", Axis::Height, room.eased(Axis::Height) + t * 2}};
}

}  // namespace

Style taperedCup() {
  return {
      .id = "tapered-cup",
      .title = worded("styles", "Tapered cup"),
      .summary = worded("styles", "A cup of three to twelve sides, wider at the top, open."),
      .traits = {.showsProduct = true,
                 .suitsRound = true,
                 .difficulty = 2,
                 .suits = worded("styles", "Sweets, seeds, small plants, pencils.")},
      .words = prismWords() + NetWords{.pieces = {{"cup", worded("pieces", "cup")}}},
      .parameters =
          {sidesParameter(),
           measure("across", worded("styles", "Across the base"),
                   worded("styles",
                          "From side to opposite side of the base, or twice the way from its "
                          "middle. Its tabs must fit."))
               .standard(mm(80))
               .from(leastAcross())
               .to(kLargestSide),
           measure("flare", worded("styles", "Wider at the top by"),
                   worded("styles",
                          "At most two thirds of the height, or the base's tabs would not fit."))
               .standard(mm(20))
               .from(Length())
               .to([](const Parameters& p, const Workbench&) {
                 return p.length("height").nm() * 2 / 3;
               }),
           measure("height", worded("styles", "Height"),
                   worded("styles",
                          "Upright, from the base to the rim. The smallest glue seam must fit."))
               .standard(mm(80))
               .from(leastPrismHeight())
               .to(kLargestSide),
           wallSeamParameter("across")},
      .needs = cupNeeds,
      .build = buildCup,
  };
}

}  // namespace creasewright
