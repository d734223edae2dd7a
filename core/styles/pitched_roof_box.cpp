#include "styles/pitched_roof_box.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "styles/parameter_rows.h"
#include "styles/parts/four_walls.h"

namespace creasewright {
namespace {

enum Stage {
  BackAndSeam = 1,
  Walls,
  BottomFlaps,
  Bottom,
  GableFlaps,
  FrontRoof,
  RidgeTuck,
  BackRoof
};

/// A roof of two equal slopes over walls `width` apart; mm and degrees.
struct Pitch {
  double width, rise;

  [[nodiscard]] double slant() const { return std::hypot(width / 2, rise); }
  [[nodiscard]] double slope() const {
    return std::atan2(rise, width / 2) * 180 / std::numbers::pi;
  }
};

/// A wall with a gable on top.
Shape gableWall(const FourWalls& w, const Pitch& roof) {
  return {{{0, 0},
           {w.width, 0},
           {w.width, w.height},
           {w.width / 2, w.height + roof.rise},
           {0, w.height}},
          {"bottom", "right", "right-slope", "left-slope", "left"}};
}

/// Lies under the roof. Flat, its lower end stays in the gap beside the roof.
Shape gableFlap(const Pitch& roof, double depth) {
  const double gap = 90 - roof.slope() - 3;
  const double atWall = depth / std::tan(std::min(gap, 60.0) * std::numbers::pi / 180);
  return trapezoid(roof.slant(), depth, atWall, depth / 3);
}

Shape mirrored(Shape shape, double width) {
  for (Point& p : shape.outline) p.x = width - p.x;
  std::ranges::reverse(shape.outline);
  std::ranges::rotate(shape.outline, shape.outline.begin() + 2);
  return shape;
}

/// The front roof is glued to the gables' flaps; the back roof lies on them and tucks in at the
/// ridge.
void addRoof(NetBuilder& net, const FourWalls& w, const Pitch& roof, double flap, double tuck) {
  const Shape panel = uprightWall(w.length, roof.slant());
  const double fold = 90 - roof.slope();
  net.hinge({"front", "top"}, "front/roof", panel, {fold, FrontRoof})
      .hinge({"back", "top"}, "back/roof", panel, {fold, BackRoof});
  const Shape atLeft = gableFlap(roof, flap);
  const Shape atRight = mirrored(atLeft, roof.slant());
  // Seen from outside, the front lies left of the right wall and right of the left wall.
  const auto add = [&](const std::string& side, const std::string& onLeft,
                       const std::string& onRight) {
    const std::string left = side + "/" + onLeft + "-flap";
    const std::string right = side + "/" + onRight + "-flap";
    const auto method = [](const std::string& roofOf) {
      return roofOf == "front" ? Method::Glue : Method::Rest;
    };
    net.hinge({side, "left-slope"}, left, atLeft, {90, GableFlaps})
        .hinge({side, "right-slope"}, right, atRight, {90, GableFlaps})
        .mate(left, onLeft + "/roof", Face::Inside, method(onLeft), true)
        .mate(right, onRight + "/roof", Face::Inside, method(onRight), true);
  };
  add("right", "front", "back");
  add("left", "back", "front");
  const double clear = flap + 2;
  const double across = w.length - 2 * clear;
  net.hinge({"back/roof", "top", clear, across}, "back/roof/tuck",
            roundedFlap(across, tuck, std::min({tuck / 2, 8.0, across / 4})),
            {2 * roof.slope(), RidgeTuck})
      .mate("back/roof/tuck", "front/roof", Face::Inside, Method::Tuck, true)
      .open({"front/roof", "top"}, {"back/roof", "top"}, "opens")
      .bends(BackRoof, BendCode::TuckSlidesIn)
      .showing({"front/roof", "back/roof"});
}

std::vector<Piece> buildHouse(const Parameters& p, const Workbench& bench) {
  const FourWalls walls{p.mm("length"), p.mm("width"), p.mm("height"), p.mm("seam")};
  const Pitch roof{walls.width, p.mm("rise")};
  NetBuilder net({"back-and-seam", "walls", "bottom-flaps", "bottom", "gable-flaps", "front-roof",
                  "ridge-tuck", "back-roof"});
  addFourWalls(net, walls, gableWall(walls, roof), Walls);
  addGluedBottom(net, walls, bench.caliper.mm(), BottomFlaps, Bottom);
  addRoof(net, walls, roof, p.mm("flap"), p.mm("tuck"));
  return {{"box", net.take(),
           Cavity{"front", {walls.length / 2, walls.height / 2, walls.width / 2}, {0, 2, 1}}}};
}

/// Walls take half a caliper, the seam and the bottom's flaps inside them one more each.
std::vector<Need> houseNeeds(const Room& room, const Parameters&, const Workbench& bench) {
  const Length t = bench.caliper;
  return {{"width", Axis::Width, room.eased(Axis::Width) + t * 3},
          {"length", Axis::Length, room.eased(Axis::Length) + t * 2},
          {"height", Axis::Height, room.eased(Axis::Height) + t * 4}};
}

}  // namespace

Style pitchedRoofBox() {
  const Length gap = mm(3);
  const Limit tab = smallestFlap();
  return {
      .id = "pitched-roof-box",
      .title = worded("styles", "Pitched-roof box"),
      .summary =
          worded("styles", "A little house: the back of the roof opens and tucks in at the ridge."),
      .traits = {.difficulty = 2,
                 .suits = worded("styles", "Biscuits, sweets, calendars and villages of favours.")},
      .words = {.stages = {{"back-roof", worded("stages", "close the back of the roof"),
                            worded("stages", "Lay the back of the roof on the gables.")},
                           {"front-roof", worded("stages", "glue the front of the roof"),
                            worded("stages", "Lay the front of the roof down and press.")},
                           {"gable-flaps", worded("stages", "fold in the gable flaps"),
                            worded("stages", "Fold both gable flaps in.")},
                           {"ridge-tuck", worded("stages", "fold the tuck at the ridge"),
                            worded("stages", "Fold the tuck at the ridge inwards.")}},
                .panels = {{"back-flap", worded("panels", "back flap")},
                           {"front-flap", worded("panels", "front flap")}}},
      .parameters =
          {measure("length", worded("styles", "Length"),
                   worded("styles",
                          "Of front and back, along the ridge. Two flaps and the tuck must fit."))
               .standard(mm(80))
               .from(greatest(plus(times(4, tab), mm(10)), plus(tab, gap)))
               .to(kLargestSide),
           measure("width", worded("styles", "Width"), worded("styles", "Of the gable walls."))
               .standard(mm(60))
               .from(greatest(mm(30), times(5, tab)))
               .to(kLargestSide),
           measure(
               "height", worded("styles", "Height"),
               worded("styles", "Of the walls, up to the eaves. The bottom's glue tab must fit."))
               .standard(mm(60))
               .from(greatest(mm(15), calipers(25)))
               .to(kLargestSide),
           measure("rise", worded("styles", "Rise"),
                   worded("styles",
                          "Of the ridge over the eaves: a fifth to seven tenths of the width."))
               .standard(mm(25))
               .from(shareOfWidth(20))
               .to(shareOfWidth(70)),
           measure("flap", worded("styles", "Gable flap"),
                   worded("styles", "Under both slopes of the roof."))
               .standard(mm(8))
               .from(tab)
               .to(least(partOf("width", 5), partOf("length", 4)))
               .givesWay(),
           measure("tuck", worded("styles", "Tuck flap"),
                   worded("styles", "At the ridge, under the front of the roof."))
               .standard(mm(12))
               .from(tab)
               .to(partOf("width", 2, gap))
               .givesWay(),
           measure("seam", worded("styles", "Glue seam"),
                   worded("styles", "Joins the left side to the front."))
               .standard(mm(12))
               .from(tab)
               .to(otherPlus("length", -gap))
               .givesWay()},
      .needs = houseNeeds,
      .build = buildHouse,
  };
}

}  // namespace creasewright
