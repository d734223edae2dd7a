#include <algorithm>
#include <cmath>
#include <string>

#include "styles/library.h"
#include "styles/limits.h"
#include "styles/parts/four_walls.h"
#include "styles/parts/punched_hole.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

enum Stage { Gussets = 1, BackAndSeam, Walls, BottomFlaps, Bottom };

constexpr double kRim = 20;        // mm at the top for the holes
constexpr double kHoleBelow = 10;  // mm from the edge to the middle of a small hole

/// The drawn halves of a side, as they stand, with the crease between them from the top down to the
/// point where the two diagonals from the bottom corners meet, half a width above the bottom; and
/// the halves of the triangle below (gusset of a block bottom bag: sectors 135, 45, 45, 135 degrees
/// obey Kawasaki's theorem).
struct Gusset {
  double half, height;

  [[nodiscard]] Shape first() const {
    return restedOn({{{0, 0}, {half, half}, {half, height}, {0, height}},
                     {"diagonal", "middle", "top", "left"}},
                    "left");
  }
  [[nodiscard]] Shape second() const {
    return restedOn({{{0, half}, {half, 0}, {half, height}, {0, height}},
                     {"diagonal", "right", "top", "middle"}},
                    "middle");
  }
  [[nodiscard]] Shape firstCorner() const {
    return restedOn({{{0, 0}, {half, 0}, {half, half}}, {"bottom", "middle", "diagonal"}},
                    "diagonal");
  }
  [[nodiscard]] Shape secondCorner() const {
    return restedOn({{{0, 0}, {half, 0}, {0, half}}, {"bottom", "diagonal", "middle"}}, "diagonal");
  }
};

/// A side between two walls. Standing open its gusset is flat; it is scored for folding the bag.
void addSide(NetBuilder& net, const Gusset& gusset, std::string_view after, const std::string& one,
             const std::string& two, int stage) {
  const double flap = std::min(gusset.half, net.edgeLength("front", "bottom") / 2 - 1);
  const Shape bottomFlap = trapezoid(gusset.half, flap, flap / 6, flap / 6);
  const HingeFold crease{0, Gussets};
  net.hinge({after, "right"}, one, gusset.first(), {90, stage})
      .hinge({one, "middle"}, two, gusset.second(), crease)
      .hinge({one, "diagonal"}, one + "/corner", gusset.firstCorner(), crease)
      .hinge({two, "diagonal"}, two + "/corner", gusset.secondCorner(), crease)
      .loop({one + "/corner", "middle"}, two + "/corner", crease)
      .showing({one, two, one + "/corner", two + "/corner"});
  for (const std::string& half : {one, two})
    net.hinge({half + "/corner", "bottom"}, half + "/corner/" + half + "-flap", bottomFlap,
              {90, BottomFlaps});
}

Shape punchedWall(const FourWalls& w, double hole) {
  Shape wall = uprightWall(w.length, w.height);
  if (hole > 0)
    for (const double at : {0.32, 0.68})
      wall.openings.push_back(
          punchedHole({w.length * at, w.height - std::max(kHoleBelow, hole * 0.7)}, hole));
  return wall;
}

std::vector<Piece> buildBag(const Parameters& p, const Making& making) {
  const FourWalls w{p.mm("length"), p.mm("width"), p.mm("height"), p.mm("seam")};
  const Gusset gusset{w.width / 2, w.height};
  const Shape wall = punchedWall(w, p.flag("handle-holes") ? p.mm("hole") : 0);
  const double taper = std::min(w.seam * 0.27, w.height / 4);
  NetBuilder net({"gussets", "back-and-seam", "walls", "bottom-flaps", "bottom"});
  net.root("front", wall);
  addSide(net, gusset, "front", "right-front", "right-back", Walls);
  net.hinge({"right-back", "right"}, "back", restedOn(wall, "left"), {90, BackAndSeam});
  addSide(net, gusset, "back", "left-back", "left-front", BackAndSeam);
  net.hinge({"left-front", "right"}, "seam", trapezoid(w.height, w.seam, taper, taper),
            {90, BackAndSeam})
      .mate("seam", "front", Face::Inside, Method::Glue, true)
      .showing({"front", "back"});
  addBottomPanel(net, w, making.caliper.mm(), BottomFlaps, Bottom);
  for (const std::string half : {"right-front", "right-back", "left-back", "left-front"})
    net.mate(half + "/corner/" + half + "-flap", "front/bottom", Face::Inside, Method::Rest, true);
  Cavity cavity{"front", {w.length / 2, w.height / 3, w.width / 2}, {0, 2, 1}};
  cavity.high.y = w.height;
  return {{"bag", net.take(), cavity}};
}

/// Half the width is left above the product, where the gussets fold in when the bag is closed.
std::vector<Need> bagNeeds(const Room& room, const Parameters&, const Making& making) {
  const Length t = making.caliper;
  const Length width = making.grid.roundUp(
      std::max(room.eased(Axis::Width) + t * 3, Length::nanometres(25'000'000)));
  return {
      {"width", Axis::Width, room.eased(Axis::Width) + t * 3},
      {"length", Axis::Length, room.eased(Axis::Length) + t * 2},
      {"height", Axis::Height,
       room.eased(Axis::Height) + t * 3 + width / 2 + Length::mm(kRim) + Length::nanometres(1)}};
}

/// The lower half of the height at least is free of the gussets' diagonals and the holes.
std::int64_t lowestBag(const Parameters& p, const Making& m) {
  return std::max(p.length("width").nm() + Length::mm(kRim).nm() + 10'000'000, m.caliper.nm() * 25);
}

}  // namespace

Style gussetedBag() {
  const Length gap = Length::nanometres(3'000'000);
  return {
      .id = "gusseted-bag",
      .title = "Gusseted bag",
      .summary = "Stands on a block bottom, folds flat, with holes for a ribbon handle.",
      .traits = {.difficulty = 2,
                 .suits = "Biscuits, coffee, books, several small things at once."},
      .parameters = {{"length", "Length", "Of front and back, along the bottom.",
                      ParameterKind::Length, Length::nanometres(110'000'000).nm(),
                      greatest(fixed(Length::nanometres(30'000'000)), plus(smallestFlap(), gap)),
                      fixed(kLargestSide)},
                     {"width", "Width", "Of the sides, which fold in along the middle.",
                      ParameterKind::Length, Length::nanometres(60'000'000).nm(),
                      fixed(Length::nanometres(25'000'000)), fixed(kLargestSide)},
                     {"height", "Height",
                      "At least the width and 30 mm, so that the gussets and the holes find room.",
                      ParameterKind::Length, Length::nanometres(180'000'000).nm(), lowestBag,
                      fixed(Length::nanometres(1'500'000'000))},
                     {"handle-holes", "Handle holes", "Two in front and back, for a ribbon.",
                      ParameterKind::Flag, 1, fixedCount(0), fixedCount(1)},
                     {"hole", "Hole", "Across a hole, at most a fifth of the length.",
                      ParameterKind::Length, Length::nanometres(5'000'000).nm(),
                      fixed(Length::nanometres(3'000'000)), partOf("length", 5)},
                     givesWay({"seam", "Glue seam", "Joins the left side to the front.",
                               ParameterKind::Length, Length::nanometres(12'000'000).nm(),
                               smallestFlap(), otherPlus("length", -gap)})},
      .needs = bagNeeds,
      .build = buildBag,
  };
}

}  // namespace creasewright
