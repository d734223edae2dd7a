#include "styles/parts/glued_tray.h"

#include <algorithm>
#include <cmath>

#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

/// Two tabs on one wall stay this far apart.
constexpr Length kTabGap = mm(2);

/// A short wall with its tabs; `first` and `second` are the long walls met at the start and the end
/// of its crease.
void addShortWall(NetBuilder& net, const GluedTray& tray, const std::string& side,
                  const Shape& shape, const std::string& first, const std::string& second) {
  const std::string wall = "base/" + side;
  net.hinge({"base", side}, wall, shape, {90, ShortWalls});
  net.hinge({wall, "left"}, wall + '/' + first + "-tab", gluedTab(tray.depth, tray.tab),
            {90, CornerTabs});
  net.hinge({wall, "right"}, wall + '/' + second + "-tab", gluedTab(tray.depth, tray.tab),
            {90, CornerTabs});
  net.mate(wall + '/' + first + "-tab", "base/" + first, Face::Inside, Method::Glue, true);
  net.mate(wall + '/' + second + "-tab", "base/" + second, Face::Inside, Method::Glue, true);
}

}  // namespace

std::vector<std::string> gluedTrayStages() { return {"long-walls", "corner-tabs", "short-walls"}; }

Shape gluedTab(double width, double depth) {
  const double taper = std::min(depth * std::tan(Angle::degrees(15).radians()), width / 4);
  return trapezoid(width, depth, taper, taper);
}

void addGluedTray(NetBuilder& net, const GluedTray& tray, const Shape& longWall,
                  const Shape& leftWall, const Shape& rightWall) {
  Shape base = rectangle(tray.length, tray.width);
  base.edges = {"front", "right", "back", "left"};
  net.root("base", base)
      .hinge({"base", "front"}, "base/front", longWall, {90, LongWalls})
      .hinge({"base", "back"}, "base/back", longWall, {90, LongWalls});
  addShortWall(net, tray, "left", leftWall, "front", "back");
  addShortWall(net, tray, "right", rightWall, "back", "front");
  net.showing({"base", "base/front", "base/back", "base/left", "base/right"});
}

Cavity insideOf(const GluedTray& tray) {
  Cavity cavity{"base", {tray.length / 2, tray.width / 2, tray.depth / 2}};
  cavity.high.z = tray.depth;
  return cavity;
}

Holding lidOn(std::string_view piece, const GluedTray& lid, const GluedTray& below,
              double caliper) {
  const Point3 corner{(below.length - lid.length) / 2, (below.width + lid.width) / 2,
                      below.depth + caliper};
  Holding held{Hold::Loose, std::string(piece)};
  held.place = Transform::translation(corner).after(Transform::rotationX(Angle::degrees(180)));
  return held;
}

ParameterSpec cornerTabParameter(std::string_view lengthKey) {
  return measure(
             "tab", worded("styles", "Corner tab"),
             worded("styles", "Glued inside the long walls; the two on one wall must not meet."))
      .standard(Length::inches(1, 2))
      .from(smallestFlap())
      .to(partOf(lengthKey, 2, kTabGap / 2))
      .givesWay();
}

Limit shortestTabbedWall() { return plus(times(2, smallestFlap()), kTabGap); }

}  // namespace creasewright
