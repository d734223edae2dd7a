#include <algorithm>

#include "styles/library.h"
#include "styles/limits.h"
#include "styles/parts/glued_tray.h"
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

/// As long as the tray outside; width and depth as its own parameters say.
Piece sleevePiece(const Parameters& p, const GluedTray& tray, double t) {
  const Sleeve sleeve{tray.length + t, tray.width + p.mm("sleeve-wider"),
                      tray.depth + p.mm("sleeve-deeper"), p.mm("seam"), 0};
  NetBuilder net({"back-and-seam", "wrap"});
  addSleeve(net, sleeve, 2);
  const Over over{"tray",
                  {Length(), Length::mm(p.mm("sleeve-wider") - 2 * t),
                   Length::mm(p.mm("sleeve-deeper") - 3 * t)},
                  {true, true, true}};
  Piece piece{"sleeve", net.take(), insideOf(sleeve), over};
  piece.held = Holding{Hold::Loose, "tray"};
  return piece;
}

std::vector<Piece> buildBox(const Parameters& p, const Making& making) {
  const GluedTray tray{p.mm("length"), p.mm("width"), p.mm("depth"), p.mm("tab")};
  return {trayPiece(p, tray), sleevePiece(p, tray, making.caliper.mm())};
}

/// The tray as in a two-piece box. The sleeve's walls and the tray's take a caliper each way, on
/// the depth the seam one more.
std::vector<Need> boxNeeds(const Room& room, const Parameters&, const Making& making) {
  const Length t = making.caliper;
  return {{"length", Axis::Length, room.eased(Axis::Length) + t},
          {"width", Axis::Width, room.eased(Axis::Width) + t * 3},
          {"depth", Axis::Height, room.eased(Axis::Height) + t},
          {"sleeve-wider", Axis::Width, kSleeveEase + t * 2},
          {"sleeve-deeper", Axis::Height, t * 4}};
}

/// Card above and below the hole, and beside it.
std::int64_t largestHole(const Parameters& p, const Making&) {
  return std::min(p.length("depth"), p.length("width")).nm() / 2;
}

}  // namespace

Style drawerBox() {
  const Length seamGap = Length::nanometres(3'000'000);
  const Limit mostLarger = fixed(Length::nanometres(20'000'000));
  return {
      .id = "drawer-box",
      .title = "Drawer box",
      .summary = "A tray that slides in a sleeve, with a hole for a ribbon to pull it by.",
      .lying = Lying::Flat,
      .traits = {.difficulty = 2, .suits = "Truffles, jewellery, matches, tea bags, small sets."},
      .parameters =
          {{"length", "Length", "Of the tray, along the sleeve. Two corner tabs must fit.",
            ParameterKind::Length, Length::inches(4).nm(), shortestTabbedWall(),
            fixed(kLargestSide)},
           {"width", "Width", "Of the tray. The sleeve's seam must fit, with 3 mm to spare.",
            ParameterKind::Length, Length::inches(5, 2).nm(),
            greatest(fixed(Length::nanometres(12'000'000)), plus(smallestFlap(), seamGap)),
            fixed(kLargestSide)},
           {"depth", "Depth", "Of the tray. At least the smallest tab.", ParameterKind::Length,
            Length::inches(1).nm(), smallestFlap(), fixed(Length::nanometres(300'000'000))},
           {"sleeve-wider", "Sleeve wider by",
            "Scored width of sleeve against tray: two cards and the ease between them.",
            ParameterKind::Length, Length::inches(1, 8).nm(), calipers(2), mostLarger},
           {"sleeve-deeper", "Sleeve deeper by",
            "Scored depth of sleeve against tray: two cards, the seam and a little to slide.",
            ParameterKind::Length, Length::inches(1, 16).nm(), calipers(3), mostLarger},
           cornerTabParameter("length"),
           givesWay({"seam", "Glue seam",
                     "Glued inside the sleeve's front, narrower than the tray.",
                     ParameterKind::Length, Length::inches(1, 2).nm(), smallestFlap(),
                     otherPlus("width", -seamGap)}),
           {"ribbon-hole", "Ribbon hole", "A hole in the tray's end for a ribbon pull.",
            ParameterKind::Flag, 1, fixedCount(0), fixedCount(1)},
           {"hole", "Hole", "Across the ribbon hole, at most half the depth.",
            ParameterKind::Length, Length::nanometres(5'000'000).nm(),
            fixed(Length::nanometres(3'000'000)), largestHole}},
      .needs = boxNeeds,
      .build = buildBox,
  };
}

}  // namespace creasewright
