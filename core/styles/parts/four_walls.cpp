#include "styles/parts/four_walls.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "styles/parts/regular_polygon.h"

namespace creasewright {

Shape uprightWall(double width, double height) {
  Shape shape = rectangle(width, height);
  shape.edges = {"bottom", "right", "top", "left"};
  return shape;
}

void addFourWalls(NetBuilder& net, const FourWalls& w, const Shape& side, int stage) {
  const int backStage = stage - 1;
  const double taper = std::min(w.seam * std::tan(Angle::degrees(15).radians()), w.height / 4);
  const Shape standing = restedOn(side, "left");
  net.root("front", uprightWall(w.length, w.height))
      .hinge({"front", "right"}, "right", standing, {90, stage})
      .hinge({"right", "right"}, "back", restedOn(uprightWall(w.length, w.height), "left"),
             {90, backStage})
      .hinge({"back", "right"}, "left", standing, {90, backStage})
      .hinge({"left", "right"}, "seam", trapezoid(w.height, w.seam, taper, taper), {90, backStage})
      .mate("seam", "front", Face::Inside, Method::Glue, true)
      .showing({"front", "right", "back", "left"});
}

void addFourWalls(NetBuilder& net, const FourWalls& w, int stage) {
  addFourWalls(net, w, uprightWall(w.width, w.height), stage);
}

void addBottomPanel(NetBuilder& net, const FourWalls& w, double caliper,
                    const BottomPanel& bottom) {
  const double across = w.length - 2 * caliper;
  const double tab = std::max(std::min({10.0, w.height / 2}), std::max(6.0, 10 * caliper));
  const double taper = std::min(tab / 3, across / 8);
  net.hinge({"front", "bottom", caliper, across}, "front/bottom", rectangle(across, w.width),
            bottom.fold)
      .hinge({"front/bottom", "outer"}, "front/bottom/tab", trapezoid(across, tab, taper, taper),
             bottom.tab)
      .mate("front/bottom/tab", bottom.back, Face::Inside, Method::Glue, true)
      .showing({"front/bottom"});
}

void addGluedBottom(NetBuilder& net, const FourWalls& w, double caliper, int flapStage,
                    int bottomStage) {
  const double flap = std::min(w.length / 2 - 1, w.width / 2);
  for (const std::string side : {"left", "right"})
    net.hinge({side, "bottom"}, side + "/bottom-flap",
              trapezoid(w.width, flap, w.width / 8, w.width / 8), {90, flapStage});
  addBottomPanel(net, w, caliper, {{90, bottomStage}, {90, flapStage}});
  net.bends(bottomStage, BendCode::TuckSlidesIn);
  net.mate("left/bottom-flap", "front/bottom", Face::Inside, Method::Rest, true)
      .mate("right/bottom-flap", "front/bottom", Face::Inside, Method::Rest, true);
}

}  // namespace creasewright
