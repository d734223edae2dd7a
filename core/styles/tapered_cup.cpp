#include "styles/library.h"
#include "styles/limits.h"
#include "styles/parts/frustum.h"
#include "styles/parts/prism_limits.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

std::vector<Piece> buildCup(const Parameters& p, const Making& making) {
  const int n = sidesOf(p);
  const double bottom = p.mm("across");
  Frustum walls{n,
                sideOf(n, bottom / 2),
                sideOf(n, (bottom + p.mm("flare")) / 2),
                p.mm("height"),
                p.mm("seam"),
                0};
  walls.tab = baseTab(walls.deepestTab(), making.caliper.mm());
  NetBuilder net({"walls-and-seam", "last-wall", "bottom-tabs", "base"});
  addFrustumWalls(net, walls, 2);
  addFrustumBase(net, walls, 3, 4);
  return {{"cup", net.take(), insideOf(walls)}};
}

/// The product stands on the base, where the cup is narrowest. A wall takes half a caliper, a seam
/// or tab inside it one more; leaning walls a little more than upright ones.
std::vector<Need> cupNeeds(const Room& room, const Parameters& chosen, const Making& making) {
  const Length t = making.caliper;
  const double around = apothemFor(room, sidesOf(chosen));
  return {{"across", Axis::Length, Length::mm(2 * around + 1e-5) + t * 4},
          {"height", Axis::Height, room.eased(Axis::Height) + t * 2}};
}

}  // namespace

Style taperedCup() {
  return {
      .id = "tapered-cup",
      .title = "Tapered cup",
      .summary = "A cup of three to twelve sides, wider at the top, open.",
      .traits = {.showsProduct = true,
                 .suitsRound = true,
                 .difficulty = 2,
                 .suits = "Sweets, seeds, small plants, pencils."},
      .parameters = {sidesParameter(),
                     {"across", "Across the base",
                      "From side to opposite side of the base, or twice the way from its middle. "
                      "Its tabs must fit.",
                      ParameterKind::Length, Length::nanometres(80'000'000).nm(), leastAcross(),
                      fixed(kLargestSide)},
                     {"flare", "Wider at the top by",
                      "At most two thirds of the height, or the base's tabs would not fit.",
                      ParameterKind::Length, Length::nanometres(20'000'000).nm(), fixed(Length()),
                      [](const Parameters& p, const Making&) {
                        return p.length("height").nm() * 2 / 3;
                      }},
                     {"height", "Height",
                      "Upright, from the base to the rim. The smallest glue seam must fit.",
                      ParameterKind::Length, Length::nanometres(80'000'000).nm(),
                      leastPrismHeight(), fixed(kLargestSide)},
                     wallSeamParameter("across")},
      .needs = cupNeeds,
      .build = buildCup,
  };
}

}  // namespace creasewright
