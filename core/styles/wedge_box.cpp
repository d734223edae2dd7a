#include "styles/wedge_box.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "net/net_builder.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

enum Stage { Tabs = 1, LeftWall, RightWall, BackWall, LidFlaps, Lid };

/// A slice: an isosceles triangle with walls; mm and degrees.
struct Wedge {
  double length;  ///< from the back to the tip
  double width;   ///< of the back
  double height, tab, tuck;

  [[nodiscard]] double side() const { return std::hypot(length, width / 2); }
  /// Between the back and a side, inside.
  [[nodiscard]] double backCorner() const {
    return std::atan2(length, width / 2) * 180 / std::numbers::pi;
  }
  [[nodiscard]] double tip() const { return 180 - 2 * backCorner(); }
};

/// Standing on its back edge, the tip away from it.
Shape slice(const Wedge& w) {
  return {{{0, 0}, {w.width, 0}, {w.width / 2, w.length}}, {"back", "right", "left"}};
}

void addGlueTab(NetBuilder& net, const Wedge& w, HingeAt at, std::string id, std::string_view onto,
                double inside) {
  const double taper = std::min(w.tab * 0.27, w.height / 4);
  net.hinge(at, id, trapezoid(w.height, w.tab, taper, taper), {180 - inside, Tabs})
      .mate(id, onto, Face::Inside, Method::Glue, true);
}

/// The lid's flaps keep clear of the glued tabs at the back and at the tip.
void addLid(NetBuilder& net, const Wedge& w) {
  net.hinge({"base/back", "outer"}, "base/back/lid", slice(w), {90, Lid});
  const double gap = w.tab + 1;
  const double along = w.side() - 2 * gap;
  const double inset = std::min(w.tuck / 2, along / 4);
  const Shape flap = trapezoid(along, w.tuck, inset, inset);
  net.hinge({"base/back/lid", "right", gap, along}, "base/back/lid/left-flap", flap, {90, LidFlaps})
      .hinge({"base/back/lid", "left", gap, along}, "base/back/lid/right-flap", flap,
             {90, LidFlaps})
      .mate("base/back/lid/left-flap", "base/left", Face::Inside, Method::Tuck, true)
      .mate("base/back/lid/right-flap", "base/right", Face::Inside, Method::Tuck, true)
      .open({"base/back/lid", "right"}, {"base/left", "outer"}, "opens")
      .open({"base/back/lid", "left"}, {"base/right", "outer"}, "opens")
      .bends(Lid, BendCode::TuckSlidesIn);
}

std::vector<Piece> buildWedge(const Parameters& p, const Workbench&) {
  const Wedge w{p.mm("length"), p.mm("width"), p.mm("height"), p.mm("tab"), p.mm("tuck")};
  NetBuilder net({"tabs", "left-wall", "right-wall", "back-wall", "lid-flaps", "lid"});
  const Shape side = rectangle(w.side(), w.height);
  net.root("base", slice(w))
      .hinge({"base", "left"}, "base/left", side, {90, LeftWall})
      .hinge({"base", "right"}, "base/right", side, {90, RightWall})
      .hinge({"base", "back"}, "base/back", rectangle(w.width, w.height), {90, BackWall});
  addGlueTab(net, w, {"base/left", "right"}, "base/left/tip-tab", "base/right", w.tip());
  addGlueTab(net, w, {"base/back", "left"}, "base/back/right-tab", "base/right", w.backCorner());
  addGlueTab(net, w, {"base/back", "right"}, "base/back/left-tab", "base/left", w.backCorner());
  addLid(net, w);
  net.showing({"base/left", "base/right", "base/back", "base/back/lid"});
  const Cavity cavity{"base", {w.width / 2, w.length / 4, w.height / 2}, {1, 0, 2}};
  return {{"box", net.take(), cavity}};
}

/// Half way to the tip a slice is half as wide as its back: there the product may end. The sides
/// lean by 45 degrees at most, and carry two layers inside.
std::vector<Need> wedgeNeeds(const Room& room, const Parameters&, const Workbench& bench) {
  const Length t = bench.caliper;
  const Length width = room.eased(Axis::Width) * 2 + t * 16;
  const Length length = room.eased(Axis::Length) * 2 + t * 6;
  return {{"width", Axis::Width, std::max(width, length / 3 + bench.grid.step())},
          {"length", Axis::Length, std::max(length, width / 2 + bench.grid.step())},
          {"height", Axis::Height, room.eased(Axis::Height) + t * 2}};
}

}  // namespace

Style wedgeBox() {
  const Length least = mm(30);
  return {
      .id = "wedge-box",
      .title = worded("styles", "Wedge box"),
      .summary = worded("styles", "A slice with a lid that tucks in: several make a cake."),
      .traits = {.difficulty = 2,
                 .suits =
                     worded("styles", "A slice of cake, a cheese, favours for a round table.")},
      .words = {.stages =
                    {{"back-wall", worded("stages", "raise the back and glue its tabs"),
                      worded("stages", "Stand the back up and press its tabs.")},
                     {"left-wall", worded("stages", "raise the left wall"),
                      worded("stages", "Stand the left wall up.")},
                     {"lid-flaps", worded("stages", "fold the flaps of the lid"),
                      worded("stages", "Fold the flaps of the lid inwards.")},
                     {"right-wall", worded("stages", "raise the right wall and glue it to the tab"),
                      worded("stages", "Stand the right wall up and press it onto the tab.")}},
                .panels = {{"left-flap", worded("panels", "left flap")},
                           {"left-tab", worded("panels", "left tab")},
                           {"right-flap", worded("panels", "right flap")},
                           {"right-tab", worded("panels", "right tab")},
                           {"tip-tab", worded("panels", "tip tab")}}},
      .parameters =
          {measure("length", worded("styles", "Length"),
                   worded("styles", "From the back to the tip, at least half the width."))
               .standard(mm(110))
               .from(greatest(plus(times(3, smallestFlap()), least), partOf("width", 2)))
               .to(kLargestSide),
           measure("width", worded("styles", "Width"),
                   worded("styles",
                          "Of the back; at least a third of the length, or the tip is too sharp."))
               .standard(mm(70))
               .from(greatest(least, partOf("length", 3)))
               .to(kLargestSide),
           measure("height", worded("styles", "Height"),
                   worded("styles", "Of the walls. The lid's flaps go down half of it at most."))
               .standard(mm(50))
               .from(greatest(mm(16), times(2, smallestFlap())))
               .to(kLargestSide),
           measure("tab", worded("styles", "Glue tab"),
                   worded("styles", "At the tip and at both ends of the back."))
               .standard(mm(10))
               .from(smallestFlap())
               .to(partOf("length", 3, mm(10)))
               .givesWay(),
           measure("tuck", worded("styles", "Tuck flap"),
                   worded("styles", "On both sides of the lid."))
               .standard(mm(12))
               .from(greatest(mm(8), smallestFlap()))
               .to(partOf("height", 2))
               .givesWay()},
      .needs = wedgeNeeds,
      .build = buildWedge,
  };
}

}  // namespace creasewright
