#include "styles/exploding_box.h"

#include <string>

#include "styles/parameter_rows.h"
#include "styles/parts/glued_tray.h"

namespace creasewright {
namespace {

constexpr std::array<std::string_view, 3> kNames{"outer-cross", "middle-cross", "inner-cross"};

/// A base with four walls that nothing holds but the lid; mm.
struct Cross {
  double length, width, height;
};

Piece crossPiece(const Cross& c, std::string_view name) {
  Shape base = rectangle(c.length, c.width);
  base.edges = {"front", "right", "back", "left"};
  NetBuilder net({"walls-up"});
  net.root("base", base)
      .hinge({"base", "front"}, "base/front", rectangle(c.length, c.height), {90, 1})
      .hinge({"base", "right"}, "base/right", rectangle(c.width, c.height), {90, 1})
      .hinge({"base", "back"}, "base/back", rectangle(c.length, c.height), {90, 1})
      .hinge({"base", "left"}, "base/left", rectangle(c.width, c.height), {90, 1})
      .showing({"base/front", "base/right", "base/back", "base/left"});
  constexpr std::array<std::string_view, 4> kWalls{"base/front", "base/right", "base/back",
                                                   "base/left"};
  for (std::size_t i = 0; i < 4; ++i)
    net.open({kWalls.at(i), "left"}, {kWalls.at((i + 1) % 4), "right"}, "opens");
  Cavity cavity{"base", {c.length / 2, c.width / 2, c.height / 2}};
  cavity.high.z = c.height;
  return {std::string(name), net.take(), cavity};
}

Piece lidPiece(const Parameters& p, const Cross& outer, double t) {
  const GluedTray lid{outer.length + p.mm("lid-longer"), outer.width + p.mm("lid-wider"),
                      p.mm("lid-depth"), p.mm("tab")};
  NetBuilder net(gluedTrayStages());
  const Shape shortWall = rectangle(lid.width, lid.depth);
  addGluedTray(net, lid, rectangle(lid.length, lid.depth), shortWall, shortWall);
  const GoesOver over{
      std::string(kNames[0]),
      {Length::mm(p.mm("lid-longer") - 2 * t), Length::mm(p.mm("lid-wider") - 4 * t), Length()}};
  Piece piece{"lid", net.take(), insideOf(lid), over};
  piece.held = lidOn(kNames[0], lid, {outer.length, outer.width, outer.height, 0}, t);
  return piece;
}

/// From the innermost cross outwards, each larger and higher by the step; the lid comes last.
std::vector<Piece> buildBox(const Parameters& p, const Workbench& bench) {
  const double t = bench.caliper.mm();
  const double step = p.mm("step");
  const auto layers = static_cast<int>(p.count("layers"));
  std::vector<Piece> pieces;
  Cross cross{};
  for (int inside = layers - 1; inside >= 0; --inside) {
    const int around = layers - 1 - inside;  // how many crosses lie in this one
    cross = {p.mm("length") + 2 * step * around, p.mm("width") + 2 * step * around,
             p.mm("height") - step * inside};
    const bool innermost = layers > 1 && inside == layers - 1;
    Piece piece =
        crossPiece(cross, innermost ? kNames[2] : kNames.at(static_cast<std::size_t>(inside)));
    if (around > 0) {
      const Length ease = Length::mm(2 * (step - t));
      piece.over = GoesOver{pieces.back().name, {ease, ease, Length()}};
      pieces.back().held =
          Holding{Hold::Glue, piece.name,   "base",
                  "base",     Face::Inside, Transform::translation({step, step, t})};
    }
    pieces.push_back(std::move(piece));
  }
  pieces.push_back(lidPiece(p, cross, t));
  return pieces;
}

/// Walls take half a caliper on either side. The innermost cross is lower by its steps.
std::vector<Need> boxNeeds(const Room& room, const Parameters& chosen, const Workbench& bench) {
  const Length t = bench.caliper;
  const Length ease = room.lidEase;
  const Length lower = bench.grid.roundUp(chosen.length("step")) * (chosen.count("layers") - 1);
  return {{"length", Axis::Length, room.eased(Axis::Length) + t},
          {"width", Axis::Width, room.eased(Axis::Width) + t},
          {"height", Axis::Height, room.eased(Axis::Height) + t + lower},
          {"lid-longer", Axis::Length, ease + t * 2},
          {"lid-wider", Axis::Width, ease + t * 4}};
}

std::int64_t lowestWall(const Parameters& p, const Workbench& m) {
  return smallestFlap()(p, m) + p.length("step").nm() * (p.count("layers") - 1);
}

}  // namespace

Style explodingBox() {
  const Limit mostLarger = mm(20);
  return {
      .id = "exploding-box",
      .title = worded("styles", "Exploding box"),
      .summary = worded("styles", "Layered crosses fall open when the lid is lifted."),
      .traits = {.difficulty = 1,
                 .suits =
                     worded("styles", "Photographs, messages, vouchers, a small gift inside.")},
      .words = {.pieces = {{"inner-cross", worded("pieces", "inner cross")},
                           {"middle-cross", worded("pieces", "middle cross")},
                           {"outer-cross", worded("pieces", "outer cross")}}},
      .parameters =
          {measure("length", worded("styles", "Length"),
                   worded("styles", "Of the innermost cross's base. The lid's tabs must fit."))
               .standard(mm(80))
               .from(shortestTabbedWall())
               .to(kLargestSide),
           measure("width", worded("styles", "Width"),
                   worded("styles", "Of the innermost cross's base."))
               .standard(mm(80))
               .from(mm(15))
               .to(kLargestSide),
           measure(
               "height", worded("styles", "Height"),
               worded("styles", "Of the outermost walls; each layer inside is lower by the step."))
               .standard(mm(90))
               .from(lowestWall)
               .to(kLargestSide),
           number("layers", worded("styles", "Layers"),
                  worded("styles", "Crosses one in the other, glued base on base."))
               .standard(2)
               .from(1)
               .to(3),
           measure("step", worded("styles", "Step"),
                   worded("styles",
                          "By which each layer is smaller than the one around it, all round."))
               .standard(mm(5))
               .from(greatest(mm(2), calipers(4)))
               .to(mm(20)),
           measure("lid-longer", worded("styles", "Lid longer by"),
                   worded("styles",
                          "Scored length of lid against the outer cross: two cards and the ease "
                          "between them."))
               .standard(Length::inches(1, 8))
               .from(calipers(2))
               .to(mostLarger),
           measure("lid-wider", worded("styles", "Lid wider by"),
                   worded("styles",
                          "Scored width of lid against the outer cross: two cards, the lid's two "
                          "tabs and the ease."))
               .standard(Length::inches(1, 8))
               .from(calipers(4))
               .to(mostLarger),
           measure("lid-depth", worded("styles", "Lid depth"),
                   worded("styles", "Deep enough to hold the walls up, at most their height."))
               .standard(mm(25))
               .from(smallestFlap())
               .to(otherPlus("height")),
           cornerTabParameter("length")},
      .needs = boxNeeds,
      .build = buildBox,
  };
}

}  // namespace creasewright
