#include "styles/two_piece_box.h"

#include <algorithm>

#include "styles/parameter_rows.h"
#include "styles/parts/glued_tray.h"
#include "styles/parts/needs.h"
#include "styles/parts/thumb_notch.h"

namespace creasewright {
namespace {

Piece trayPiece(const GluedTray& tray) {
  NetBuilder net(gluedTrayStages());
  const Shape shortWall = rectangle(tray.width, tray.depth);
  addGluedTray(net, tray, rectangle(tray.length, tray.depth), shortWall, shortWall);
  return {"tray", net.take(), insideOf(tray)};
}

/// A shallower tray over the first, with notches in its long walls to hold the tray by. A lid's
/// corner tabs lie inside its long walls and take a caliper each.
Piece lidPiece(const Parameters& p, const GluedTray& tray, double t) {
  const GluedTray lid{tray.length + p.mm("lid-longer"), tray.width + p.mm("lid-wider"),
                      p.mm("lid-depth"), tray.tab};
  Shape longWall = rectangle(lid.length, lid.depth);
  // Not so wide that the tabs would show in them, and none smaller than a fingertip's edge.
  const double notch = std::min({10.0, lid.depth * 0.6, lid.length / 2 - lid.tab - 1});
  if (p.flag("thumb-notch") && notch >= 3) longWall = withThumbNotch(longWall, "outer", notch);
  NetBuilder net(gluedTrayStages());
  const Shape shortWall = rectangle(lid.width, lid.depth);
  addGluedTray(net, lid, longWall, shortWall, shortWall);
  const GoesOver over{
      "tray",
      {Length::mm(p.mm("lid-longer") - 2 * t), Length::mm(p.mm("lid-wider") - 4 * t), Length()}};
  Piece piece{"lid", net.take(), insideOf(lid), over};
  piece.held = lidOn("tray", lid, tray, t);
  return piece;
}

std::vector<Piece> buildBox(const Parameters& p, const Workbench& bench) {
  const GluedTray tray{p.mm("length"), p.mm("width"), p.mm("depth"), p.mm("tab")};
  return {trayPiece(tray), lidPiece(p, tray, bench.caliper.mm())};
}

/// Walls take half a caliper on either side; the tabs lie inside both long walls of tray and lid.
/// Half a caliper of the base counts against the depth.
std::vector<Need> boxNeeds(const Room& room, const Parameters&, const Workbench& bench) {
  const Length t = bench.caliper;
  const Length ease = room.lidEase;
  std::vector<Need> needs = needsOf(room, bench, {"length", 1}, {"width", 3}, {"depth", 1});
  needs.push_back({"lid-longer", Axis::Length, ease + t * 2});
  needs.push_back({"lid-wider", Axis::Width, ease + t * 4});
  return needs;
}

}  // namespace

Style twoPieceBox() {
  const Limit mostLarger = mm(20);
  return {
      .id = "two-piece-box",
      .title = worded("styles", "Two-piece box"),
      .summary = worded("styles", "A tray with a lift-off lid as deep as you like."),
      .lying = Lying::Flat,
      .traits = {.difficulty = 1,
                 .suits = worded("styles", "Soap, biscuits, jewellery, cards, anything flat.")},
      .parameters =
          {measure("length", worded("styles", "Length"),
                   worded("styles", "Of the tray. Two corner tabs must fit side by side."))
               .standard(Length::inches(9, 2))
               .from(shortestTabbedWall())
               .to(kLargestSide),
           measure("width", worded("styles", "Width"), worded("styles", "Of the tray."))
               .standard(Length::inches(3))
               .from(mm(10))
               .to(kLargestSide),
           measure("depth", worded("styles", "Depth"),
                   worded("styles", "Of the tray. At least the smallest tab."))
               .standard(Length::inches(3, 2))
               .from(smallestFlap())
               .to(mm(300)),
           measure(
               "lid-longer", worded("styles", "Lid longer by"),
               worded("styles",
                      "Scored length of lid against tray: two cards and the ease between them."))
               .standard(Length::inches(1, 8))
               .from(calipers(2))
               .to(mostLarger),
           measure(
               "lid-wider", worded("styles", "Lid wider by"),
               worded(
                   "styles",
                   "Scored width of lid against tray: two cards, the lid's two tabs and the ease."))
               .standard(Length::inches(1, 8))
               .from(calipers(4))
               .to(mostLarger),
           measure("lid-depth", worded("styles", "Lid depth"),
                   worded("styles", "As deep as you like, at most as deep as the tray."))
               .standard(Length::inches(1))
               .from(smallestFlap())
               .to(otherPlus("depth")),
           cornerTabParameter("length"),
           toggle("thumb-notch", worded("styles", "Thumb notches"),
                  worded("styles", "Half-round notches in the lid's long walls."))
               .on()},
      .needs = boxNeeds,
      .build = buildBox,
  };
}

}  // namespace creasewright
