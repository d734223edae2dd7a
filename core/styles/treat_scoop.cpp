#include "styles/treat_scoop.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

#include "net/net_builder.h"
#include "styles/parameter_rows.h"
#include "styles/parts/needs.h"

namespace creasewright {
namespace {

enum Stage { CornerTabs = 1, ShortWalls, LongWalls };

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

std::vector<Piece> buildScoop(const Parameters& p, const Workbench&) {
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

/// So that the tabs' slanting ends leave something to glue.
std::int64_t widestTab(const Parameters& p, const Workbench&) {
  return std::min(p.length("front").nm() / 4, p.length("length").nm() / 2 - 1'000'000);
}

/// A shallow curve: the lowest place stays above half the front.
std::int64_t deepestDip(const Parameters& p, const Workbench&) {
  return std::min(p.length("front").nm() / 3, p.length("length").nm() / 4);
}

}  // namespace

Style treatScoop() {
  const Length gap = mm(4);
  return {
      .id = "treat-scoop",
      .title = worded("styles", "Treat scoop"),
      .summary = worded("styles", "Open and tapered, with a high back and a curved front edge."),
      .traits = {.showsProduct = true,
                 .difficulty = 1,
                 .suits = worded("styles",
                                 "Popcorn, sweets in bags, biscuits, small gifts to reach into.")},
      .words = {.pieces = {{"scoop", worded("pieces", "scoop")}}},
      .parameters =
          {measure("length", worded("styles", "Length"),
                   worded("styles", "Of the base, along the front. Two tabs must fit."))
               .standard(mm(70))
               .from(greatest(mm(20), plus(times(2, smallestFlap()), gap)))
               .to(kLargestSide),
           measure("width", worded("styles", "Width"),
                   worded("styles", "Of the base, from front to back."))
               .standard(mm(45))
               .from(mm(15))
               .to(kLargestSide),
           measure("back", worded("styles", "Back height"),
                   worded("styles", "Upright, from the base to the edge of the back."))
               .standard(mm(110))
               .from(plus(times(4, smallestFlap()), gap))
               .to(kLargestSide),
           measure("front", worded("styles", "Front height"),
                   worded("styles", "Upright; lower than the back."))
               .standard(mm(70))
               .from(times(4, smallestFlap()))
               .to(otherPlus("back", -mm(3))),
           measure("lean", worded("styles", "Lean"),
                   worded("styles", "How far the edge of the back stands outside the base."))
               .standard(mm(15))
               .from(partOf("back", 50))
               .to(partOf("back", 4)),
           measure("dip", worded("styles", "Dip"),
                   worded("styles", "How far the front's curved edge dips in the middle."))
               .standard(mm(12))
               .from(Length())
               .to(deepestDip),
           measure("tab", worded("styles", "Glue tab"),
                   worded("styles", "At the ends of the sides, glued inside front and back."))
               .standard(mm(10))
               .from(smallestFlap())
               .to(widestTab)
               .givesWay()},
      .needs =
          // The walls lean away from the product; at the base they take a caliper, the tabs another
          // one on both sides of the width.
      holding({"length", 2}, {"width", 4}, {"back", 1}),
      .build = buildScoop,
  };
}

}  // namespace creasewright
