#include "styles/drawer_box.h"

#include <algorithm>

#include "styles/parameter_rows.h"
#include "styles/parts/glued_tray.h"
#include "styles/parts/needs.h"
#include "styles/parts/punched_hole.h"
#include "styles/parts/sleeve.h"

namespace creasewright {
namespace {

/// A drawer in its sleeve: 1/16 in on the width, both sides together (common practice, no published
/// source).
constexpr Length kSleeveEase = Length::inches(1, 16);

/// The tray's right wall carries the hole for a ribbon to pull by.
Piece trayPiece(const Parameters& p, const GluedTray& tray) {
  NetBuilder net(gluedTrayStages());
  const Shape wall = rectangle(tray.width, tray.depth);
  Shape pulled = wall;
  if (p.flag("ribbon-hole"))
    pulled.openings = {punchedHole({tray.width / 2, tray.depth / 2}, p.mm("hole"))};
  addGluedTray(net, tray, rectangle(tray.length, tray.depth), wall, pulled);
  return {"tray", net.take(), insideOf(tray)};
}

/// About the middle of the tray, its front on top.
Holding roundTray(const Sleeve& sleeve, const GluedTray& tray) {
  const Point3 corner{(tray.length - sleeve.length) / 2, (tray.width - sleeve.width) / 2,
                      (tray.depth + sleeve.depth) / 2};
  Holding held{Hold::Loose, "tray"};
  held.place = Transform::frame(corner, {0, 1, 0}, {1, 0, 0});
  return held;
}

/// As long as the tray outside; width and depth as its own parameters say.
Piece sleevePiece(const Parameters& p, const GluedTray& tray, double t) {
  const Sleeve sleeve{tray.length + t, tray.width + p.mm("sleeve-wider"),
                      tray.depth + p.mm("sleeve-deeper"), p.mm("seam"), 0};
  NetBuilder net({"back-and-seam", "wrap"});
  addSleeve(net, sleeve, 2);
  const GoesOver over{"tray",
                      {Length(), Length::mm(p.mm("sleeve-wider") - 2 * t),
                       Length::mm(p.mm("sleeve-deeper") - 3 * t)},
                      {true, true, true}};
  Piece piece{"sleeve", net.take(), insideOf(sleeve), over};
  piece.held = roundTray(sleeve, tray);
  return piece;
}

std::vector<Piece> buildBox(const Parameters& p, const Workbench& bench) {
  const GluedTray tray{p.mm("length"), p.mm("width"), p.mm("depth"), p.mm("tab")};
  return {trayPiece(p, tray), sleevePiece(p, tray, bench.caliper.mm())};
}

/// The tray as in a two-piece box. The sleeve's walls and the tray's take a caliper each way, on
/// the depth the seam one more.
std::vector<Need> boxNeeds(const Room& room, const Parameters&, const Workbench& bench) {
  const Length t = bench.caliper;
  std::vector<Need> needs = needsOf(room, bench, {"length", 1}, {"width", 3}, {"depth", 1});
  needs.push_back({"sleeve-wider", Axis::Width, kSleeveEase + t * 2});
  needs.push_back({"sleeve-deeper", Axis::Height, t * 4});
  return needs;
}

/// Card above and below the hole, and beside it.
std::int64_t largestHole(const Parameters& p, const Workbench&) {
  return std::min(p.length("depth"), p.length("width")).nm() / 2;
}

}  // namespace

Style drawerBox() {
  const Length seamGap = mm(3);
  const Limit mostLarger = mm(20);
  return {
      .id = "drawer-box",
      .title = worded("styles", "Drawer box"),
      .summary = worded("styles",
                        "A tray that slides in a sleeve, with a hole for a ribbon to pull it by."),
      .lying = Lying::Flat,
      .traits = {.difficulty = 2,
                 .suits = worded("styles", "Truffles, jewellery, matches, tea bags, small sets.")},
      .parameters =
          {measure("length", worded("styles", "Length"),
                   worded("styles", "Of the tray, along the sleeve. Two corner tabs must fit."))
               .standard(Length::inches(4))
               .from(shortestTabbedWall())
               .to(kLargestSide),
           measure("width", worded("styles", "Width"),
                   worded("styles", "Of the tray. The sleeve's seam must fit, with 3 mm to spare."))
               .standard(Length::inches(5, 2))
               .from(greatest(mm(12), plus(smallestFlap(), seamGap)))
               .to(kLargestSide),
           measure("depth", worded("styles", "Depth"),
                   worded("styles", "Of the tray. At least the smallest tab."))
               .standard(Length::inches(1))
               .from(smallestFlap())
               .to(mm(300)),
           measure(
               "sleeve-wider", worded("styles", "Sleeve wider by"),
               worded("styles",
                      "Scored width of sleeve against tray: two cards and the ease between them."))
               .standard(Length::inches(1, 8))
               .from(calipers(2))
               .to(mostLarger),
           measure("sleeve-deeper", worded("styles", "Sleeve deeper by"),
                   worded("styles",
                          "Scored depth of sleeve against tray: two cards, the seam and a little "
                          "to slide."))
               .standard(Length::inches(1, 16))
               .from(calipers(3))
               .to(mostLarger),
           cornerTabParameter("length"),
           measure("seam", worded("styles", "Glue seam"),
                   worded("styles", "Glued inside the sleeve's front, narrower than the tray."))
               .standard(Length::inches(1, 2))
               .from(smallestFlap())
               .to(otherPlus("width", -seamGap))
               .givesWay(),
           toggle("ribbon-hole", worded("styles", "Ribbon hole"),
                  worded("styles", "A hole in the tray's end for a ribbon pull."))
               .on(),
           measure("hole", worded("styles", "Hole"),
                   worded("styles", "Across the ribbon hole, at most half the depth."))
               .standard(mm(5))
               .from(mm(3))
               .to(largestHole)},
      .needs = boxNeeds,
      .build = buildBox,
  };
}

}  // namespace creasewright
