#include "styles/card_wallet.h"

#include <algorithm>
#include <utility>

#include "styles/parameter_rows.h"
#include "styles/parts/four_walls.h"
#include "styles/parts/pocket.h"

namespace creasewright {
namespace {

enum Stage { Sides = 1, Spine, PocketUp, CoverSpine, Cover };

constexpr double kBesideSlit = 8;  // mm of card at both ends of a slit

/// Slits across the pocket's front, evenly below its edge.
void addSlits(NetBuilder& net, const Pocket& pocket, int count) {
  for (int i = 1; i <= count; ++i) {
    const double y = pocket.height * i / (count + 1);
    net.slit("back/bottom/pocket", {{kBesideSlit, y}, {pocket.width - kBesideSlit, y}});
  }
}

std::vector<Piece> buildWallet(const Parameters& p, const Workbench&) {
  const double length = p.mm("length");
  Pocket pocket{p.mm("width"), p.mm("depth"), p.mm("pocket"), p.mm("tab"), 0};
  if (p.flag("thumb-notch")) pocket.notch = std::min({10.0, pocket.width / 5, pocket.height / 4});
  NetBuilder net({"pocket-sides", "spine", "pocket", "cover-spine", "cover"});
  net.root("back", uprightWall(pocket.width, length));
  addPocket(net, pocket, Sides, Spine, PocketUp);
  addSlits(net, pocket, static_cast<int>(p.count("slits")));
  const Polygon overPocket{
      {0, 0}, {pocket.height, 0}, {pocket.height, pocket.width}, {0, pocket.width}};
  net.hinge({"back", "left"}, "back/left", rectangle(length, pocket.depth), {90, CoverSpine})
      .hinge({"back/left", "outer"}, "back/left/cover", rectangle(length, pocket.width),
             {90, Cover})
      .mate("back/left/cover", "back/bottom/pocket", Face::Outside, Method::Rest, true, overPocket)
      .open({"back/bottom", "right"}, {"back/left", "left"}, "opens")
      .open({"back/bottom/pocket/left-side", "right"}, {"back/left", "left"}, "opens")
      .showing({"back", "back/left", "back/left/cover"});
  return {{"wallet", net.take(), insideOf(pocket, length)}};
}

}  // namespace

Style cardWallet() {
  std::vector<ParameterSpec> parameters = pocketParameters();
  const auto pocket = std::ranges::find(parameters, "pocket", &ParameterSpec::key);
  pocket->standard = mm(60).nm();
  pocket->minimum = mm(20);
  const auto length = std::ranges::find(parameters, "length", &ParameterSpec::key);
  length->minimum = greatest(std::move(length->minimum), mm(30));
  const auto width = std::ranges::find(parameters, "width", &ParameterSpec::key);
  width->minimum = greatest(std::move(width->minimum), mm(30));
  parameters.push_back(number("slits", worded("styles", "Slits"),
                              worded("styles", "Across the pocket, to slide more cards into."))
                           .standard(1)
                           .from(0)
                           .to(3));
  parameters.push_back(toggle("thumb-notch", worded("styles", "Thumb notch"),
                              worded("styles", "In the pocket's edge."))
                           .on());
  return {
      .id = "card-wallet",
      .title = worded("styles", "Card wallet"),
      .summary =
          worded("styles", "Opens like a book; a pocket with slits holds one card or several."),
      .lying = Lying::Flat,
      .traits = {.difficulty = 1,
                 .suits =
                     worded("styles", "Gift cards, vouchers, tickets, banknotes, photographs.")},
      .words = pocketWords() + NetWords{.pieces = {{"wallet", worded("pieces", "wallet")}}},
      .parameters = std::move(parameters),
      .needs = pocketNeeds(),
      .build = buildWallet,
  };
}

}  // namespace creasewright
