#include "styles/book_wrap.h"

#include <algorithm>

#include "styles/parameter_rows.h"
#include "styles/parts/four_walls.h"
#include "styles/parts/pocket.h"

namespace creasewright {
namespace {

enum Stage { Sides = 1, Spine, PocketUp, CoverSpine, Cover };

constexpr double kTuckClear = 0.5;  // mm between the tuck and the pocket's sides, beside the card

/// The cover comes over from the top and its end slides into the pocket.
std::vector<Piece> buildWrap(const Parameters& p, const Workbench& bench) {
  const double length = p.mm("length");
  const Pocket pocket{p.mm("width"), p.mm("depth"), p.mm("pocket"), p.mm("tab"), 0};
  NetBuilder net({"pocket-sides", "spine", "pocket", "cover-spine", "cover"});
  net.root("back", uprightWall(pocket.width, length));
  addPocket(net, pocket, Sides, Spine, PocketUp);
  const double clear = kTuckClear + bench.caliper.mm();
  const double across = pocket.width - 2 * clear;
  const double tuck = p.mm("tuck");
  net.hinge({"back", "top"}, "back/top", rectangle(pocket.width, pocket.depth), {90, CoverSpine})
      .hinge({"back/top", "outer"}, "back/top/cover",
             rectangle(pocket.width, length - pocket.height), {90, Cover})
      .hinge({"back/top/cover", "outer", clear, across}, "back/top/cover/tuck",
             roundedFlap(across, tuck, std::min({6.0, tuck / 2, across / 4})),
             {0, Cover, CreaseKind::Flat})
      .mate("back/top/cover/tuck", "back/bottom/pocket", Face::Inside, Method::Tuck, true)
      .bends(Cover, BendCode::TuckSlidesIn)
      .showing({"back", "back/bottom", "back/top", "back/top/cover"});
  return {{"wrap", net.take(), insideOf(pocket, length)}};
}

}  // namespace

Style bookWrap() {
  std::vector<ParameterSpec> parameters = pocketParameters();
  parameters.push_back(measure("tuck", worded("styles", "Tuck"),
                               worded("styles", "How far the cover slides into the pocket."))
                           .standard(mm(15))
                           .from(greatest(mm(8), smallestFlap()))
                           .to(otherPlus("pocket", -mm(3)))
                           .givesWay());
  return {
      .id = "book-wrap",
      .title = worded("styles", "Book wrap"),
      .summary = worded("styles", "A cover that opens like a matchbook and tucks into a pocket."),
      .lying = Lying::Flat,
      .traits = {.difficulty = 1,
                 .suits = worded(
                     "styles", "Seed packets, tea bags, chocolate squares, face masks, samples.")},
      .words = pocketWords() + NetWords{.pieces = {{"wrap", worded("pieces", "wrap")}}},
      .parameters = std::move(parameters),
      .needs = pocketNeeds(),
      .build = buildWrap,
  };
}

}  // namespace creasewright
