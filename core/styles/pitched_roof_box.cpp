#include <algorithm>
#include <cmath>
#include <numbers>

#include "styles/library.h"
#include "styles/limits.h"
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
      .bends(BackRoof, "tuck-slides-in")
      .showing({"front/roof", "back/roof"});
}

std::vector<Piece> buildHouse(const Parameters& p, const Making& making) {
  const FourWalls walls{p.mm("length"), p.mm("width"), p.mm("height"), p.mm("seam")};
  const Pitch roof{walls.width, p.mm("rise")};
  NetBuilder net({"back-and-seam", "walls", "bottom-flaps", "bottom", "gable-flaps", "front-roof",
                  "ridge-tuck", "back-roof"});
  addFourWalls(net, walls, gableWall(walls, roof), Walls);
  addGluedBottom(net, walls, making.caliper.mm(), BottomFlaps, Bottom);
  addRoof(net, walls, roof, p.mm("flap"), p.mm("tuck"));
  return {{"box", net.take(),
           Cavity{"front", {walls.length / 2, walls.height / 2, walls.width / 2}, {0, 2, 1}}}};
}

/// Walls take half a caliper, the seam and the bottom's flaps inside them one more each.
std::vector<Need> houseNeeds(const Room& room, const Parameters&, const Making& making) {
  const Length t = making.caliper;
  return {{"width", Axis::Width, room.eased(Axis::Width) + t * 3},
          {"length", Axis::Length, room.eased(Axis::Length) + t * 2},
          {"height", Axis::Height, room.eased(Axis::Height) + t * 4}};
}

/// A share of the width, in hundredths.
Limit shareOfWidth(std::int64_t hundredths) {
  return [hundredths](const Parameters& p, const Making&) {
    return p.length("width").nm() / 100 * hundredths;
  };
}

}  // namespace

Style pitchedRoofBox() {
  const Length gap = Length::nanometres(3'000'000);
  const Limit tab = smallestFlap();
  return {
      .id = "pitched-roof-box",
      .title = "Pitched-roof box",
      .summary = "A little house: the back of the roof opens and tucks in at the ridge.",
      .traits = {.difficulty = 2, .suits = "Biscuits, sweets, calendars and villages of favours."},
      .parameters =
          {{"length", "Length",
            "Of front and back, along the ridge. Two flaps and the tuck must fit.",
            ParameterKind::Length, Length::nanometres(80'000'000).nm(),
            greatest(plus(times(4, tab), Length::nanometres(10'000'000)), plus(tab, gap)),
            fixed(kLargestSide)},
           {"width", "Width", "Of the gable walls.", ParameterKind::Length,
            Length::nanometres(60'000'000).nm(),
            greatest(fixed(Length::nanometres(30'000'000)), times(5, tab)), fixed(kLargestSide)},
           {"height", "Height", "Of the walls, up to the eaves. The bottom's glue tab must fit.",
            ParameterKind::Length, Length::nanometres(60'000'000).nm(),
            greatest(fixed(Length::nanometres(15'000'000)), calipers(25)), fixed(kLargestSide)},
           {"rise", "Rise", "Of the ridge over the eaves: a fifth to seven tenths of the width.",
            ParameterKind::Length, Length::nanometres(25'000'000).nm(), shareOfWidth(20),
            shareOfWidth(70)},
           givesWay({"flap", "Gable flap", "Under both slopes of the roof.", ParameterKind::Length,
                     Length::nanometres(8'000'000).nm(), tab,
                     least(partOf("width", 5), partOf("length", 4))}),
           givesWay({"tuck", "Tuck flap", "At the ridge, under the front of the roof.",
                     ParameterKind::Length, Length::nanometres(12'000'000).nm(), tab,
                     partOf("width", 2, gap)}),
           givesWay({"seam", "Glue seam", "Joins the left side to the front.",
                     ParameterKind::Length, Length::nanometres(12'000'000).nm(), tab,
                     otherPlus("length", -gap)})},
      .needs = houseNeeds,
      .build = buildHouse,
  };
}

}  // namespace creasewright
