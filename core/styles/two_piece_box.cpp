#include <algorithm>

#include "styles/library.h"
#include "styles/limits.h"
#include "styles/parts/glued_tray.h"
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
  const Over over{
      "tray",
      {Length::mm(p.mm("lid-longer") - 2 * t), Length::mm(p.mm("lid-wider") - 4 * t), Length()}};
  Piece piece{"lid", net.take(), insideOf(lid), over};
  piece.held = lidOn("tray", lid, tray, t);
  return piece;
}

std::vector<Piece> buildBox(const Parameters& p, const Making& making) {
  const GluedTray tray{p.mm("length"), p.mm("width"), p.mm("depth"), p.mm("tab")};
  return {trayPiece(tray), lidPiece(p, tray, making.caliper.mm())};
}

/// Walls take half a caliper on either side; the tabs lie inside both long walls of tray and lid.
/// Half a caliper of the base counts against the depth.
std::vector<Need> boxNeeds(const Room& room, const Parameters&, const Making& making) {
  const Length t = making.caliper;
  const Length ease = room.lidEase;
  return {{"length", Axis::Length, room.eased(Axis::Length) + t},
          {"width", Axis::Width, room.eased(Axis::Width) + t * 3},
          {"depth", Axis::Height, room.eased(Axis::Height) + t},
          {"lid-longer", Axis::Length, ease + t * 2},
          {"lid-wider", Axis::Width, ease + t * 4}};
}

}  // namespace

Style twoPieceBox() {
  const Limit mostLarger = fixed(Length::nanometres(20'000'000));
  return {
      .id = "two-piece-box",
      .title = "Two-piece box",
      .summary = "A tray with a lift-off lid as deep as you like.",
      .lying = Lying::Flat,
      .traits = {.difficulty = 1, .suits = "Soap, biscuits, jewellery, cards, anything flat."},
      .parameters =
          {{"length", "Length", "Of the tray. Two corner tabs must fit side by side.",
            ParameterKind::Length, Length::inches(9, 2).nm(), shortestTabbedWall(),
            fixed(kLargestSide)},
           {"width", "Width", "Of the tray.", ParameterKind::Length, Length::inches(3).nm(),
            fixed(Length::nanometres(10'000'000)), fixed(kLargestSide)},
           {"depth", "Depth", "Of the tray. At least the smallest tab.", ParameterKind::Length,
            Length::inches(3, 2).nm(), smallestFlap(), fixed(Length::nanometres(300'000'000))},
           {"lid-longer", "Lid longer by",
            "Scored length of lid against tray: two cards and the ease between them.",
            ParameterKind::Length, Length::inches(1, 8).nm(), calipers(2), mostLarger},
           {"lid-wider", "Lid wider by",
            "Scored width of lid against tray: two cards, the lid's two tabs and the ease.",
            ParameterKind::Length, Length::inches(1, 8).nm(), calipers(4), mostLarger},
           {"lid-depth", "Lid depth", "As deep as you like, at most as deep as the tray.",
            ParameterKind::Length, Length::inches(1).nm(), smallestFlap(), otherPlus("depth")},
           cornerTabParameter("length"),
           {"thumb-notch", "Thumb notches", "Half-round notches in the lid's long walls.",
            ParameterKind::Flag, 1, fixedCount(0), fixedCount(1)}},
      .needs = boxNeeds,
      .build = buildBox,
  };
}

}  // namespace creasewright
