#include "styles/platform_insert.h"

#include <algorithm>
#include <numbers>

#include "net/net_builder.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

enum Stage { Feet = 1, Legs };

/// mm; the top has card all round its opening.
struct Platform {
  double openingLength, openingWidth, endMargin, sideMargin, height, foot;
  bool round;

  [[nodiscard]] double length() const { return openingLength + 2 * endMargin; }
  [[nodiscard]] double width() const { return openingWidth + 2 * sideMargin; }
};

/// Clockwise.
Polygon openingOf(const Platform& f) {
  const double x = f.endMargin;
  const double y = f.sideMargin;
  if (!f.round)
    return {{x, y},
            {x, y + f.openingWidth},
            {x + f.openingLength, y + f.openingWidth},
            {x + f.openingLength, y}};
  Polygon hole = ellipse({f.length() / 2, f.width() / 2}, f.openingLength / 2, f.openingWidth / 2);
  std::ranges::reverse(hole);
  return hole;
}

Shape topPanel(const Platform& f) {
  Shape top = rectangle(f.length(), f.width());
  top.edges = {"front", "right", "back", "left"};
  top.openings = {openingOf(f)};
  return top;
}

/// The drawn face comes to lie underneath: legs and feet fold towards it.
std::vector<Piece> buildInsert(const Parameters& p, const Workbench&) {
  const Platform f{p.mm("opening-length"), p.mm("opening-width"), p.mm("margin"),
                   p.mm("side-margin"),    p.mm("height"),        p.mm("foot"),
                   p.flag("round")};
  const double taper = std::min(f.foot, f.length() / 4);
  const Shape foot = trapezoid(f.length(), f.foot, taper, taper);
  const Shape longLeg = rectangle(f.length(), f.height);
  const Shape shortLeg = rectangle(f.width(), f.height);
  NetBuilder net({"feet", "legs"});
  net.root("top", topPanel(f))
      .hinge({"top", "front"}, "top/front", longLeg, {90, Legs})
      .hinge({"top/front", "outer"}, "top/front/foot", foot, {90, Feet})
      .hinge({"top", "right"}, "top/right", shortLeg, {90, Legs})
      .hinge({"top", "back"}, "top/back", longLeg, {90, Legs})
      .hinge({"top/back", "outer"}, "top/back/foot", foot, {90, Feet})
      .hinge({"top", "left"}, "top/left", shortLeg, {90, Legs})
      .open({"top/front", "left"}, {"top/right", "right"}, "box-around")
      .open({"top/front", "right"}, {"top/left", "left"}, "box-around")
      .open({"top/back", "left"}, {"top/left", "right"}, "box-around")
      .open({"top/back", "right"}, {"top/right", "left"}, "box-around")
      .showing({"top"});
  Cavity cavity{"top", {f.length() / 2, f.width() / 2, f.height / 2}};
  cavity.high.z = f.height;
  cavity.low.z = -f.height;
  cavity.through = {"top"};
  cavity.round = f.round;
  return {{"insert", net.take(), cavity}};
}

/// The product stands on the box's floor and goes through the opening, which a caliper makes
/// easier; half its height holds it. A square product needs a round opening about its corners: the
/// ellipse about a rectangle is the root of two as long and as wide.
std::vector<Need> insertNeeds(const Room& room, const Parameters& chosen, const Workbench& bench) {
  const Length t = bench.caliper;
  const double more = chosen.flag("round") && !room.round ? std::numbers::sqrt2 : 1;
  const auto opening = [&](Axis axis) { return Length::mm((room.eased(axis) + t).mm() * more); };
  return {{"opening-length", Axis::Length, opening(Axis::Length)},
          {"opening-width", Axis::Width, opening(Axis::Width)},
          {"height", Axis::Height, room.product[2] / 2 + Length::nanometres(1)}};
}

}  // namespace

Style platformInsert() {
  const Limit foot = mm(8);
  return {
      .id = "platform-insert",
      .title = worded("styles", "Platform insert"),
      .summary = worded(
          "styles", "A shelf on feet with an opening that holds the product upright in its box."),
      .traits = {.showsProduct = true,
                 .suitsRound = true,
                 .difficulty = 1,
                 .suits = worded("styles", "Jars, bottles, candles and soap in a larger box.")},
      .words = {.stages = {{"feet", worded("stages", "fold in the feet"),
                            worded("stages", "Fold the feet inwards.")},
                           {"legs", worded("stages", "fold down the legs"),
                            worded("stages", "Fold the legs down.")}},
                .pieces = {{"insert", worded("pieces", "insert")}}},
      .parameters =
          {measure("opening-length", worded("styles", "Opening length"),
                   worded("styles", "Of the opening; the product goes through it."))
               .standard(mm(50))
               .from(mm(5))
               .to(kLargestSide),
           measure("opening-width", worded("styles", "Opening width"),
                   worded("styles", "Of the opening."))
               .standard(mm(50))
               .from(mm(5))
               .to(kLargestSide),
           measure("margin", worded("styles", "Margin"),
                   worded("styles",
                          "Card at both ends of the opening. Make it so wide that the insert is 1 "
                          "mm shorter than the box inside."))
               .standard(mm(15))
               .from(mm(5))
               .to(mm(200)),
           measure("side-margin", worded("styles", "Side margin"),
                   worded("styles",
                          "Card in front of the opening and behind it; the feet lie under it."))
               .standard(mm(15))
               .from(plus(foot, mm(2)))
               .to(mm(200)),
           measure("height", worded("styles", "Height"),
                   worded("styles", "Of the legs: half the product or more."))
               .standard(mm(25))
               .from(mm(8))
               .to(mm(500)),
           measure(
               "foot", worded("styles", "Foot"),
               worded("styles", "Turned in under the long legs; it must not reach the opening."))
               .standard(mm(10))
               .from(foot)
               .to(otherPlus("side-margin", -mm(2)))
               .givesWay(),
           toggle("round", worded("styles", "Round opening"),
                  worded("styles", "For jars, tins and balls."))},
      .easeOn = {true, true, false},
      .needs = insertNeeds,
      .build = buildInsert,
  };
}

}  // namespace creasewright
