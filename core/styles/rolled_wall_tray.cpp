#include "styles/rolled_wall_tray.h"

#include <algorithm>

#include "styles/parameter_rows.h"
#include "styles/parts/glued_tray.h"
#include "styles/parts/needs.h"

namespace creasewright {
namespace {

constexpr Length kTongue = mm(5);                        // beyond the foot, the next of the grid
constexpr Length kLongestTongue = Length::inches(1, 4);  // on any grid
constexpr double kSlitPlay = 1;  // mm by which a slit is longer than its tongue is wide

/// All measures in mm.
struct Rolled {
  double length, opening, depth, rim, foot, tab, t, tongue;

  Rolled(const Parameters& p, const Workbench& bench)
      : length(p.mm("length")),
        opening(p.mm("width")),
        depth(p.mm("depth")),
        rim(p.mm("rim")),
        foot(p.mm("foot")),
        tab(p.mm("tab")),
        t(bench.caliper.mm()),
        tongue(bench.grid.roundUp(kTongue).mm()) {}

  [[nodiscard]] double width() const { return opening + 2 * rim; }
  /// The inner walls go down between the short walls.
  [[nodiscard]] double innerLength() const { return length - 2 * t; }
  [[nodiscard]] double tongueWidth() const { return std::min(20.0, length / 5); }
  /// Two tongues on each foot, a quarter of the length from either end.
  [[nodiscard]] double tongueStart(int which) const {
    return innerLength() * (which == 0 ? 0.25 : 0.75) - tongueWidth() / 2;
  }
};

enum Stage { CornerTabs = 1, ShortWalls, LongWalls, RollWalls };

/// A wall that rolls over the corner tabs; its foot lies on the base, and the foot's tongues go
/// through slits under it.
void addRolledWall(NetBuilder& net, const Rolled& r, const std::string& side) {
  const std::string wall = "base/" + side;
  const double inner = r.innerLength();
  net.hinge({"base", side}, wall, rectangle(r.length, r.depth), {90, LongWalls})
      .hinge({wall, "outer"}, wall + "/rim", rectangle(r.length, r.rim), {90, RollWalls})
      .hinge({wall + "/rim", "outer", r.t, inner}, wall + "/inner-wall", rectangle(inner, r.depth),
             {90, RollWalls})
      .hinge({wall + "/inner-wall", "outer"}, wall + "/foot", rectangle(inner, r.foot),
             {-90, RollWalls})
      .mate(wall + "/foot", "base", Face::Inside, Method::Rest, false);
  const double w = r.tongueWidth();
  const double line = side == "front" ? r.rim + r.foot : r.width() - r.rim - r.foot;
  for (const int which : {0, 1}) {
    const std::string tongue = wall + (which == 0 ? "/left-tongue" : "/right-tongue");
    const double start = r.tongueStart(which);
    net.hinge({wall + "/foot", "outer", start, w}, tongue, trapezoid(w, r.tongue, w / 8, w / 8),
              {0, RollWalls, CreaseKind::Flat});
    net.mate(tongue, "base", Face::Outside, Method::Lock, false);
    const double from = r.t + start - kSlitPlay / 2;
    net.slit("base", {{from, line}, {from + w + kSlitPlay, line}});
  }
}

/// A single wall whose tabs the rolled walls take in.
void addShortWall(NetBuilder& net, const Rolled& r, const std::string& side,
                  const std::string& first, const std::string& second) {
  const std::string wall = "base/" + side;
  net.hinge({"base", side}, wall, rectangle(r.width(), r.depth), {90, ShortWalls});
  for (const auto& [edge, other] : {std::pair("left", first), std::pair("right", second)}) {
    const std::string tab = wall + '/' + other + "-tab";
    net.hinge({wall, edge}, tab, gluedTab(r.depth, r.tab), {90, CornerTabs});
    net.mate(tab, "base/" + other, Face::Inside, Method::Tuck, true);
  }
}

std::vector<Piece> buildTray(const Parameters& parameters, const Workbench& bench) {
  const Rolled r(parameters, bench);
  NetBuilder net({"corner-tabs", "short-walls", "long-walls", "roll-walls"});
  Shape base = rectangle(r.length, r.width());
  base.edges = {"front", "right", "back", "left"};
  net.root("base", base);
  addRolledWall(net, r, "front");
  addRolledWall(net, r, "back");
  addShortWall(net, r, "left", "front", "back");
  addShortWall(net, r, "right", "back", "front");
  net.open({"base/front/rim", "left"}, {"base/right", "outer"}, "held-beside")
      .open({"base/front/rim", "right"}, {"base/left", "outer"}, "held-beside")
      .open({"base/back/rim", "left"}, {"base/left", "outer"}, "held-beside")
      .open({"base/back/rim", "right"}, {"base/right", "outer"}, "held-beside");
  net.bends(RollWalls, BendCode::InnerWallsCurl);
  net.showing({"base", "base/front", "base/back", "base/left", "base/right", "base/front/rim",
               "base/back/rim"});
  Cavity cavity{"base", {r.length / 2, r.width() / 2, r.depth / 2}};
  cavity.high.z = r.depth + r.t / 2;  // level with the top of the rims
  return {{"tray", net.take(), cavity}};
}

}  // namespace

Style rolledWallTray() {
  const Length smallestFoot = mm(6);
  const Length tongueRoom = kLongestTongue + mm(1);
  return {
      .id = "rolled-wall-tray",
      .title = worded("styles", "Rolled-wall tray"),
      .summary = worded(
          "styles", "A tray without glue: double walls hold the corners and lock into the base."),
      .lying = Lying::Flat,
      .traits = {.showsProduct = true,
                 .difficulty = 2,
                 .suits = worded("styles",
                                 "Biscuits, soap, tea-lights, small sets to see and lift out.")},
      .words = {.stages = {{"roll-walls", worded("stages", "roll the walls over the tabs"),
                            worded("stages", "Roll the walls inwards over the tabs.")}},
                .panels = {{"left-tongue", worded("panels", "left tongue")},
                           {"right-tongue", worded("panels", "right tongue")},
                           {"rim", worded("panels", "rim")}}},
      .parameters =
          {measure(
               "length", worded("styles", "Length"),
               worded("styles", "Between the single walls. Two corner tabs must fit side by side."))
               .standard(Length::inches(5))
               .from(shortestTabbedWall())
               .to(kLargestSide),
           measure(
               "width", worded("styles", "Width"),
               worded("styles", "Between the double walls. Both feet and their tongues must fit."))
               .standard(Length::inches(3))
               .from((smallestFoot + tongueRoom) * 2)
               .to(kLargestSide),
           measure("depth", worded("styles", "Depth"),
                   worded("styles", "From the base to the rim. At least the smallest tab."))
               .standard(Length::inches(1))
               .from(smallestFlap())
               .to(mm(300)),
           measure("rim", worded("styles", "Rim"),
                   worded("styles", "Thickness of the double walls; a tab and two cards go in."))
               .standard(mm(4))
               .from(greatest(mm(3), calipers(4)))
               .to(mm(40)),
           measure("foot", worded("styles", "Foot"),
                   worded("styles",
                          "Lies on the base; the feet and tongues of both sides must not meet."))
               .standard(Length::inches(3, 8))
               .from(smallestFoot)
               .to(partOf("width", 2, tongueRoom))
               .givesWay(),
           cornerTabParameter("length")},
      .needs =
          // Half a caliper on either side; the feet lie on the base, the rims on top of the walls.
      holding({"length", 1}, {"width", 1}, {"depth", 1}),
      .build = buildTray,
  };
}

}  // namespace creasewright
