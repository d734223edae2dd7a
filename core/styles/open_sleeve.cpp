#include <algorithm>

#include "styles/library.h"
#include "styles/limits.h"
#include "styles/parts/sleeve.h"

namespace creasewright {
namespace {

enum Stage { BackAndSeam = 1, Wrap };

std::vector<Piece> buildSleeve(const Parameters& p, const Making&) {
  Sleeve sleeve{p.mm("length"), p.mm("width"), p.mm("depth"), p.mm("seam"), 0};
  // The seam must not show in the front's notch.
  const double notch = std::min({10.0, sleeve.length / 4, sleeve.width / 2 - sleeve.seam - 1});
  if (p.flag("thumb-notch") && notch >= 3) sleeve.notch = notch;
  NetBuilder net({"back-and-seam", "wrap"});
  addSleeve(net, sleeve, Wrap);
  return {{"sleeve", net.take(), insideOf(sleeve)}};
}

/// Half a caliper on either side, and the seam inside the front. Ease on the width only: on the
/// depth a sleeve holds by its spring.
std::vector<Need> sleeveNeeds(const Room& room, const Parameters&, const Making& making) {
  return {{"length", Axis::Length, room.product[0]},
          {"width", Axis::Width, room.eased(Axis::Width) + making.caliper},
          {"depth", Axis::Height, room.eased(Axis::Height) + making.caliper * 2}};
}

}  // namespace

Style openSleeve() {
  const Length seamGap = Length::nanometres(3'000'000);
  return {
      .id = "open-sleeve",
      .title = "Open sleeve",
      .summary = "A flat tube open at both ends, with notches for pushing the content out.",
      .lying = Lying::Flat,
      .traits = {.showsProduct = true,
                 .difficulty = 1,
                 .suits = "Chocolate bars, soap, books, trays and finished boxes."},
      .parameters =
          {{"length", "Length", "Along the tube.", ParameterKind::Length, Length::inches(5).nm(),
            fixed(Length::nanometres(16'000'000)), fixed(kLargestSide)},
           {"width", "Width", "Of the front. At least the glue seam and 3 mm.",
            ParameterKind::Length, Length::inches(5, 2).nm(),
            greatest(fixed(Length::nanometres(12'000'000)), plus(smallestFlap(), seamGap)),
            fixed(kLargestSide)},
           {"depth", "Depth", "Of the sides. Narrower ones cannot be scored by hand.",
            ParameterKind::Length, Length::inches(1, 2).nm(), fixed(Length::nanometres(3'000'000)),
            fixed(Length::nanometres(500'000'000))},
           givesWay({"seam", "Glue seam", "Glued inside the front, 3 mm narrower than it or less.",
                     ParameterKind::Length, Length::inches(1, 2).nm(), smallestFlap(),
                     otherPlus("width", -seamGap)}),
           {"thumb-notch", "Thumb notches", "Half-round notches in front and back at one end.",
            ParameterKind::Flag, 1, fixedCount(0), fixedCount(1)}},
      .easeOn = {false, true, false},
      .needs = sleeveNeeds,
      .build = buildSleeve,
  };
}

}  // namespace creasewright
