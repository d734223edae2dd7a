#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

#include "net/net_builder.h"
#include "styles/library.h"
#include "styles/limits.h"

namespace creasewright {
namespace {

enum Stage { CornerTabs = 1, ShortWalls, LongWalls };

double toDegrees(double radians) { return radians * 180 / std::numbers::pi; }

/// A tray whose walls all lean out by the same slope; the front is lower, and curved. mm. The seams
/// lean from the square by tan m = cos(slope), and the tabs fold by acos(cos(slope)^2) (tray with
/// walls of one slope on a rectangle, elementary geometry; the tests hold tabled values beside it).
struct Scoop {
  double length, width, front, back, lean, dip, tab;

  [[nodiscard]] double slope() const { return std::atan2(back, lean); }  // radians
  [[nodiscard]] double backSlant() const { return std::hypot(back, lean); }
  [[nodiscard]] double frontSlant() const { return front / std::sin(slope()); }
  /// How far a seam leans out per mm of slant.
  [[nodiscard]] double spread() const { return std::cos(slope()); }
  [[nodiscard]] double seamLength(double slant) const { return slant * std::hypot(1, spread()); }
};

Shape wall(const Scoop& s, double bottom, double leftSlant, double rightSlant) {
  return {{{0, 0},
           {bottom, 0},
           {bottom + rightSlant * s.spread(), rightSlant},
           {-leftSlant * s.spread(), leftSlant}},
          {"inner", "right", "outer", "left"}};
}

/// Half the angle of the front's curve, radians; its chord joins the upper corners.
double curve(const Scoop& s) {
  const double half = s.length / 2 + s.frontSlant() * s.spread();
  return 2 * std::atan(s.dip / half);
}

Shape frontWall(const Scoop& s) {
  Shape shape = wall(s, s.length, s.frontSlant(), s.frontSlant());
  if (s.dip <= 0) return shape;
  const double half = s.length / 2 + s.frontSlant() * s.spread();
  const double radius = half / std::sin(curve(s));
  const Polyline edge = arc(shape.outline[2], {s.length / 2, s.frontSlant() - s.dip + radius},
                            -2 * toDegrees(curve(s)));
  shape.outline.insert(shape.outline.begin() + 3, edge.begin(), edge.end() - 1);
  shape.edges.insert(shape.edges.begin() + 3, edge.size() - 1, "outer");
  return shape;
}

/// On a seam edge of a side: the lower end stays in the gap between the flat walls, the upper end
/// below the edge of the wall it is glued to.
void addTab(NetBuilder& net, const Scoop& s, const std::string& side, const std::string& onto,
            bool onRightEdge) {
  const double slant = onto == "front" ? s.frontSlant() : s.backSlant();
  const double lean = std::atan(s.spread());
  const double gap = std::numbers::pi / 2 - 2 * lean - 0.05;
  const double low = s.tab / std::tan(gap);
  const double high = s.tab * std::tan(lean + (onto == "front" ? curve(s) : 0)) + 1;
  const std::string id = "base/" + side + "/" + onto + "-tab";
  // The frame of a right edge starts at the top.
  const Shape shape = onRightEdge ? trapezoid(s.seamLength(slant), s.tab, high, low)
                                  : trapezoid(s.seamLength(slant), s.tab, low, high);
  net.hinge({"base/" + side, onRightEdge ? "right" : "left"}, id, shape,
            {toDegrees(std::acos(s.spread() * s.spread())), CornerTabs})
      .mate(id, "base/" + onto, Face::Inside, Method::Glue, true);
}

std::vector<Piece> buildScoop(const Parameters& p, const Making&) {
  const Scoop s{p.mm("length"), p.mm("width"), p.mm("front"), p.mm("back"),
                p.mm("lean"),   p.mm("dip"),   p.mm("tab")};
  Shape base = rectangle(s.length, s.width);
  base.edges = {"front", "right", "back", "left"};
  const double fold = toDegrees(s.slope());
  const double low = s.frontSlant();
  const double high = s.backSlant();
  NetBuilder net({"corner-tabs", "short-walls", "long-walls"});
  net.root("base", base)
      .hinge({"base", "front"}, "base/front", frontWall(s), {fold, LongWalls})
      .hinge({"base", "back"}, "base/back", wall(s, s.length, high, high), {fold, LongWalls})
      .hinge({"base", "right"}, "base/right", wall(s, s.width, high, low), {fold, ShortWalls})
      .hinge({"base", "left"}, "base/left", wall(s, s.width, low, high), {fold, ShortWalls});
  addTab(net, s, "right", "front", true);
  addTab(net, s, "right", "back", false);
  addTab(net, s, "left", "back", true);
  addTab(net, s, "left", "front", false);
  net.showing({"base/front", "base/back", "base/left", "base/right"});
  Cavity cavity{"base", {s.length / 2, s.width / 2, s.front / 2}};
  cavity.high.z = s.back;
  return {{"scoop", net.take(), cavity}};
}

/// The walls lean away from the product; at the base they take a caliper, the tabs another one on
/// both sides of the width.
std::vector<Need> scoopNeeds(const Room& room, const Parameters&, const Making& making) {
  const Length t = making.caliper;
  return {{"length", Axis::Length, room.eased(Axis::Length) + t * 2},
          {"width", Axis::Width, room.eased(Axis::Width) + t * 4},
          {"back", Axis::Height, room.eased(Axis::Height) + t}};
}

/// So that the tabs' slanting ends leave something to glue.
std::int64_t widestTab(const Parameters& p, const Making&) {
  return std::min(p.length("front").nm() / 4, p.length("length").nm() / 2 - 1'000'000);
}

/// A shallow curve: the lowest place stays above half the front.
std::int64_t deepestDip(const Parameters& p, const Making&) {
  return std::min(p.length("front").nm() / 3, p.length("length").nm() / 4);
}

}  // namespace

Style treatScoop() {
  const Length gap = Length::nanometres(4'000'000);
  return {
      .id = "treat-scoop",
      .title = "Treat scoop",
      .summary = "Open and tapered, with a high back and a curved front edge.",
      .traits = {.showsProduct = true,
                 .difficulty = 1,
                 .suits = "Popcorn, sweets in bags, biscuits, small gifts to reach into."},
      .parameters =
          {{"length", "Length", "Of the base, along the front. Two tabs must fit.",
            ParameterKind::Length, Length::nanometres(70'000'000).nm(),
            greatest(fixed(Length::nanometres(20'000'000)), plus(times(2, smallestFlap()), gap)),
            fixed(kLargestSide)},
           {"width", "Width", "Of the base, from front to back.", ParameterKind::Length,
            Length::nanometres(45'000'000).nm(), fixed(Length::nanometres(15'000'000)),
            fixed(kLargestSide)},
           {"back", "Back height", "Upright, from the base to the edge of the back.",
            ParameterKind::Length, Length::nanometres(110'000'000).nm(),
            plus(times(4, smallestFlap()), gap), fixed(kLargestSide)},
           {"front", "Front height", "Upright; lower than the back.", ParameterKind::Length,
            Length::nanometres(70'000'000).nm(), times(4, smallestFlap()),
            otherPlus("back", -Length::nanometres(3'000'000))},
           {"lean", "Lean", "How far the edge of the back stands outside the base.",
            ParameterKind::Length, Length::nanometres(15'000'000).nm(), partOf("back", 50),
            partOf("back", 4)},
           {"dip", "Dip", "How far the front's curved edge dips in the middle.",
            ParameterKind::Length, Length::nanometres(12'000'000).nm(), fixed(Length()),
            deepestDip},
           givesWay({"tab", "Glue tab", "At the ends of the sides, glued inside front and back.",
                     ParameterKind::Length, Length::nanometres(10'000'000).nm(), smallestFlap(),
                     widestTab})},
      .needs = scoopNeeds,
      .build = buildScoop,
  };
}

}  // namespace creasewright
