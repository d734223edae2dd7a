#include <string>

#include "styles/library.h"
#include "styles/limits.h"
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
  const Over over{
      std::string(kNames[0]),
      {Length::mm(p.mm("lid-longer") - 2 * t), Length::mm(p.mm("lid-wider") - 4 * t), Length()}};
  Piece piece{"lid", net.take(), insideOf(lid), over};
  piece.held = lidOn(kNames[0], lid, {outer.length, outer.width, outer.height, 0}, t);
  return piece;
}

/// From the innermost cross outwards, each larger and higher by the step; the lid comes last.
std::vector<Piece> buildBox(const Parameters& p, const Making& making) {
  const double t = making.caliper.mm();
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
      piece.over = Over{pieces.back().name, {ease, ease, Length()}};
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
std::vector<Need> boxNeeds(const Room& room, const Parameters& chosen, const Making& making) {
  const Length t = making.caliper;
  const Length ease = room.lidEase;
  const Length lower = making.grid.roundUp(chosen.length("step")) * (chosen.count("layers") - 1);
  return {{"length", Axis::Length, room.eased(Axis::Length) + t},
          {"width", Axis::Width, room.eased(Axis::Width) + t},
          {"height", Axis::Height, room.eased(Axis::Height) + t + lower},
          {"lid-longer", Axis::Length, ease + t * 2},
          {"lid-wider", Axis::Width, ease + t * 4}};
}

std::int64_t lowestWall(const Parameters& p, const Making& m) {
  return smallestFlap()(p, m) + p.length("step").nm() * (p.count("layers") - 1);
}

}  // namespace

Style explodingBox() {
  const Limit mostLarger = fixed(Length::nanometres(20'000'000));
  return {
      .id = "exploding-box",
      .title = "Exploding box",
      .summary = "Layered crosses fall open when the lid is lifted.",
      .traits = {.difficulty = 1, .suits = "Photographs, messages, vouchers, a small gift inside."},
      .parameters =
          {{"length", "Length", "Of the innermost cross's base. The lid's tabs must fit.",
            ParameterKind::Length, Length::nanometres(80'000'000).nm(), shortestTabbedWall(),
            fixed(kLargestSide)},
           {"width", "Width", "Of the innermost cross's base.", ParameterKind::Length,
            Length::nanometres(80'000'000).nm(), fixed(Length::nanometres(15'000'000)),
            fixed(kLargestSide)},
           {"height", "Height", "Of the outermost walls; each layer inside is lower by the step.",
            ParameterKind::Length, Length::nanometres(90'000'000).nm(), lowestWall,
            fixed(kLargestSide)},
           {"layers", "Layers", "Crosses one in the other, glued base on base.",
            ParameterKind::Count, 2, fixedCount(1), fixedCount(3)},
           {"step", "Step", "By which each layer is smaller than the one around it, all round.",
            ParameterKind::Length, Length::nanometres(5'000'000).nm(),
            greatest(fixed(Length::nanometres(2'000'000)), calipers(4)),
            fixed(Length::nanometres(20'000'000))},
           {"lid-longer", "Lid longer by",
            "Scored length of lid against the outer cross: two cards and the ease between them.",
            ParameterKind::Length, Length::inches(1, 8).nm(), calipers(2), mostLarger},
           {"lid-wider", "Lid wider by",
            "Scored width of lid against the outer cross: two cards, the lid's two tabs and the "
            "ease.",
            ParameterKind::Length, Length::inches(1, 8).nm(), calipers(4), mostLarger},
           {"lid-depth", "Lid depth", "Deep enough to hold the walls up, at most their height.",
            ParameterKind::Length, Length::nanometres(25'000'000).nm(), smallestFlap(),
            otherPlus("height")},
           cornerTabParameter("length")},
      .needs = boxNeeds,
      .build = buildBox,
  };
}

}  // namespace creasewright
