#include "styles/open_sleeve.h"

#include <algorithm>

#include "styles/parameter_rows.h"
#include "styles/parts/sleeve.h"

namespace creasewright {
namespace {

enum Stage { BackAndSeam = 1, Wrap };

std::vector<Piece> buildSleeve(const Parameters& p, const Workbench&) {
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
std::vector<Need> sleeveNeeds(const Room& room, const Parameters&, const Workbench& bench) {
  return {{"length", Axis::Length, room.product[0]},
          {"width", Axis::Width, room.eased(Axis::Width) + bench.caliper},
          {"depth", Axis::Height, room.eased(Axis::Height) + bench.caliper * 2}};
}

}  // namespace

Style openSleeve() {
  const Length seamGap = mm(3);
  return {
      .id = "open-sleeve",
      .title = worded("styles", "Open sleeve"),
      .summary = worded("styles",
                        "A flat tube open at both ends, with notches for pushing the content out."),
      .lying = Lying::Flat,
      .traits = {.showsProduct = true,
                 .difficulty = 1,
                 .suits =
                     worded("styles", "Chocolate bars, soap, books, trays and finished boxes.")},
      .parameters =
          {measure("length", worded("styles", "Length"), worded("styles", "Along the tube."))
               .standard(Length::inches(5))
               .from(mm(16))
               .to(kLargestSide),
           measure("width", worded("styles", "Width"),
                   worded("styles", "Of the front. At least the glue seam and 3 mm."))
               .standard(Length::inches(5, 2))
               .from(greatest(mm(12), plus(smallestFlap(), seamGap)))
               .to(kLargestSide),
           measure("depth", worded("styles", "Depth"),
                   worded("styles", "Of the sides. Narrower ones cannot be scored by hand."))
               .standard(Length::inches(1, 2))
               .from(mm(3))
               .to(mm(500)),
           measure("seam", worded("styles", "Glue seam"),
                   worded("styles", "Glued inside the front, 3 mm narrower than it or less."))
               .standard(Length::inches(1, 2))
               .from(smallestFlap())
               .to(otherPlus("width", -seamGap))
               .givesWay(),
           toggle("thumb-notch", worded("styles", "Thumb notches"),
                  worded("styles", "Half-round notches in front and back at one end."))
               .on()},
      .easeOn = {false, true, false},
      .needs = sleeveNeeds,
      .build = buildSleeve,
  };
}

}  // namespace creasewright
