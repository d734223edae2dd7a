#include "styles/gusseted_bag.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "styles/parameter_rows.h"
#include "styles/parts/four_walls.h"
#include "styles/parts/punched_hole.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

enum Stage { GlueFlat = 1, OpenTube, BottomFlaps, Bottom, FoldFlat, OpenBag };

constexpr double kRim = 20;        // mm at the top for the holes
constexpr double kHoleBelow = 10;  // mm from the edge to the middle of a small hole
constexpr double kHoleAside = 2;   // mm from the seam to a hole
constexpr double kHolesApart = 3;  // mm
constexpr double kLyingFlat = 6;   // degrees: not quite, so that the layers can be seen
constexpr int kSteps = 12;         // of a movement that is not even

/// The bag lying flat on its front, and the way there. Its sides fold in along their middle down to
/// an apex half a width above the bottom; from there creases at 45 degrees go to the bottom's
/// corners and a level one goes towards the back and on across it, so that the bottom swings up
/// outside the back. At the apex the sectors are 90, 45, 90 and 135 degrees, at the back's edge
/// four times 90, at the bottom's corners 90, 90, 45 and 45: they obey Kawasaki's theorem.
///
/// On the way the level crease turns by s from 0 to 180 degrees. Seen from the side, bottom and the
/// back's foot stay joined when the bottom rises by b, sin(b) = (1 - cos(s)) / 2, and the back
/// comes nearer to cos(b) - sin(s) / 2 of its distance. The triangles below the apex have to bend.
struct FlatBag {
  double level, bottom, side;  ///< degrees

  explicit FlatBag(double share) : level(180 * share) {
    const double s = Angle::degrees(level).radians();
    const double b = std::asin(std::clamp((1 - std::cos(s)) / 2, -1.0, 1.0));
    bottom = toDegrees(b);
    side = toDegrees(std::acos(std::clamp(std::cos(b) - std::sin(s) / 2, 0.0, 1.0)));
  }
};

/// Folds a crease as `angle` says while the bag is laid flat, and back again while it is opened; it
/// has come through `before` and ends at `end` degrees.
template <class AngleOf>
HingeFold flatFold(double end, std::vector<Waypoint> before, AngleOf angle) {
  HingeFold fold{end, OpenBag, CreaseKind::Score, true, Sense::Mountain, std::move(before)};
  constexpr double kFrom = Bottom;
  for (int k = 0; k < 2 * kSteps; ++k) {
    const double done = static_cast<double>(k) / kSteps;
    fold.way.push_back({kFrom + done, Angle::degrees(angle(FlatBag(done < 1 ? done : 2 - done)))});
  }
  return fold;
}

/// A corner between two walls; `flat` is its angle while the seam is glued, which it takes between
/// two moments of the first stage.
HingeFold wallFold(double flat, double from, double to) {
  return flatFold(
      90,
      {{0, Angle()},
       {from, Angle()},
       {to, Angle::degrees(flat)},
       {GlueFlat, Angle::degrees(flat)},
       {OpenTube, Angle::degrees(90)}},
      [](const FlatBag& bag) { return 90 + bag.side; });
}

// The left side with the seam comes over the back first, then all of it over the front.
HingeFold frontRight() { return wallFold(180 - kLyingFlat, 0.5, 1); }
HingeFold rightBack() { return wallFold(kLyingFlat, 0.5, 1); }
HingeFold backLeft() { return wallFold(180 - kLyingFlat, 0, 0.5); }
HingeFold leftFront() { return wallFold(kLyingFlat, 0, 0.5); }

/// A crease that is straight until the bag is laid flat.
template <class AngleOf>
HingeFold straightFold(AngleOf angle) {
  HingeFold fold = flatFold(0, {{0, Angle()}}, angle);
  fold.sense = angle(FlatBag(1)) > 0 ? Sense::Valley : Sense::Mountain;
  return fold;
}

HingeFold middleFold() {
  return straightFold([](const FlatBag& bag) { return -2 * bag.side; });
}
HingeFold diagonalFold() {
  return straightFold([](const FlatBag& bag) { return -bag.level; });
}
HingeFold gussetLevelFold() {
  return straightFold([](const FlatBag& bag) { return bag.level; });
}
HingeFold backLevelFold() {
  return straightFold([](const FlatBag& bag) { return -bag.level; });
}

/// The bottom's flaps and the bottom, which are closed in `stage`.
template <class AngleOf>
HingeFold bottomFold(int stage, AngleOf angle) {
  return flatFold(90, {{0, Angle()}, {stage - 1.0, Angle()}, {1.0 * stage, Angle::degrees(90)}},
                  angle);
}

/// The parts of a side: its half at the front, as high as the bag; its half at the back, down to
/// the level crease; the triangle below the apex; and the small one below the level crease. Each is
/// drawn with the front at the left.
struct Gusset {
  double half, height;

  [[nodiscard]] Polygon front() const {
    return {{0, 0}, {half, half}, {half, height}, {0, height}};
  }
  [[nodiscard]] Polygon back() const {
    return {{half, half}, {2 * half, half}, {2 * half, height}, {half, height}};
  }
  [[nodiscard]] Polygon foot() const { return {{0, 0}, {2 * half, 0}, {half, half}}; }
  [[nodiscard]] Polygon backFoot() const { return {{2 * half, 0}, {2 * half, half}, {half, half}}; }
  /// The same seen from the other side, its first edge first again.
  static Shape mirrored(Polygon outline, std::vector<std::string> edges, std::string_view rest) {
    for (Point& p : outline) p.x = -p.x;
    std::ranges::reverse(outline);
    std::ranges::reverse(edges);
    std::ranges::rotate(edges, edges.begin() + 1);
    return restedOn({std::move(outline), std::move(edges)}, rest);
  }
};

const std::vector<std::string> kFrontEdges{"diagonal", "middle", "top", "wall"};
const std::vector<std::string> kBackEdges{"level", "wall", "top", "middle"};
const std::vector<std::string> kFootEdges{"bottom", "back-diagonal", "diagonal"};
const std::vector<std::string> kBackFootEdges{"wall", "level", "diagonal"};

void addBottomFlap(NetBuilder& net, const FourWalls& w, const std::string& foot) {
  const double flap = std::min(w.length / 2 - 1, w.width / 2);
  net.hinge({foot, "bottom"}, foot + "/bottom-flap",
            trapezoid(w.width, flap, w.width / 8, w.width / 8),
            bottomFold(BottomFlaps, [](const FlatBag& bag) { return 90 + bag.bottom; }));
}

/// The loops that close where the foot of a side meets the foot of the back.
void closeFoot(NetBuilder& net, const std::string& side, HingeFold corner) {
  net.loop({side + "-back-foot", "diagonal"}, side + "-foot", diagonalFold())
      .loop({side + "-back-foot", "wall"}, "back-foot", std::move(corner));
}

Shape punchedWall(const FourWalls& w, double hole, double height) {
  Shape wall = uprightWall(w.length, height);
  if (hole <= 0) return wall;
  const double aside = std::max(w.length * 0.32, w.seam + hole / 2 + kHoleAside);
  for (const double at : {aside, w.length - aside})
    wall.openings.push_back(punchedHole({at, height - std::max(kHoleBelow, hole * 0.7)}, hole));
  return wall;
}

void addWalls(NetBuilder& net, const FourWalls& w, double hole) {
  const Gusset g{w.width / 2, w.height};
  net.root("front", punchedWall(w, hole, w.height))
      .hinge({"front", "right"}, "right-front", restedOn({g.front(), kFrontEdges}, "wall"),
             frontRight())
      .hinge({"right-front", "middle"}, "right-back", restedOn({g.back(), kBackEdges}, "middle"),
             middleFold())
      .hinge({"right-back", "wall"}, "back",
             restedOn(punchedWall(w, hole, w.height - g.half), "left"), rightBack())
      .hinge({"back", "bottom"}, "back-foot", rectangle(w.length, g.half), backLevelFold())
      .hinge({"back", "right"}, "left-back", Gusset::mirrored(g.back(), kBackEdges, "wall"),
             backLeft())
      .hinge({"left-back", "middle"}, "left-front",
             Gusset::mirrored(g.front(), kFrontEdges, "middle"), middleFold())
      .hinge({"right-front", "diagonal"}, "right-foot",
             restedOn({g.foot(), kFootEdges}, "diagonal"), diagonalFold())
      .hinge({"right-back", "level"}, "right-back-foot",
             restedOn({g.backFoot(), kBackFootEdges}, "level"), gussetLevelFold())
      .hinge({"left-front", "diagonal"}, "left-foot",
             Gusset::mirrored(g.foot(), kFootEdges, "diagonal"), diagonalFold())
      .hinge({"left-back", "level"}, "left-back-foot",
             Gusset::mirrored(g.backFoot(), kBackFootEdges, "level"), gussetLevelFold());
  closeFoot(net, "right", rightBack());
  closeFoot(net, "left", backLeft());
  const double taper = std::min(w.seam * 0.27, w.height / 4);
  net.hinge({"left-front", "wall"}, "seam", trapezoid(w.height, w.seam, taper, taper), leftFront())
      .mate("seam", "front", Face::Inside, Method::Glue, true)
      .meetsIn(GlueFlat)
      .showing({"front", "back", "back-foot", "right-front", "right-back", "right-foot",
                "right-back-foot", "left-front", "left-back", "left-foot", "left-back-foot"});
}

std::vector<Piece> buildBag(const Parameters& p, const Workbench& bench) {
  const FourWalls w{p.mm("length"), p.mm("width"), p.mm("height"), p.mm("seam")};
  NetBuilder net(
      {"glue-tube-flat", "open-tube", "bottom-flaps", "bottom", "fold-bag-flat", "open-bag"});
  addWalls(net, w, p.flag("handle-holes") ? p.mm("hole") : 0);
  addBottomFlap(net, w, "right-foot");
  addBottomFlap(net, w, "left-foot");
  addBottomPanel(
      net, w, bench.caliper.mm(),
      {bottomFold(Bottom, [](const FlatBag& bag) { return 90 + bag.bottom; }),
       bottomFold(BottomFlaps, [](const FlatBag& bag) { return 90 + bag.level - bag.bottom; }),
       "back-foot"});
  net.meetsIn(Bottom).bends(Bottom, BendCode::TuckSlidesIn);
  for (const std::string side : {"left", "right"})
    net.mate(side + "-foot/bottom-flap", "front/bottom", Face::Inside, Method::Rest, true)
        .meetsIn(Bottom);
  net.bends(FoldFlat, BendCode::FoldsFlat).bends(OpenBag, BendCode::OpensAgain);
  Cavity cavity{"front", {w.length / 2, w.height / 3, w.width / 2}, {0, 2, 1}};
  cavity.high.y = w.height;
  return {{"bag", net.take(), cavity}};
}

/// Two holes find room between the seam and the middle.
Length shortestForHoles(const Parameters& p) {
  if (!p.flag("handle-holes")) return {};
  return (p.length("seam") + p.length("hole") + Length::mm(kHoleAside)) * 2 +
         Length::mm(kHolesApart);
}

/// Half the width is left above the product, where the gussets fold in when the bag is closed;
/// flat, the two gussets lie side by side.
std::vector<Need> bagNeeds(const Room& room, const Parameters& p, const Workbench& bench) {
  const Length t = bench.caliper;
  const Length width = bench.grid.roundUp(std::max(room.eased(Axis::Width) + t * 3, mm(25)));
  return {
      {"width", Axis::Width, room.eased(Axis::Width) + t * 3},
      {"length", Axis::Length,
       std::max({room.eased(Axis::Length) + t * 2, shortestForHoles(p), width})},
      {"height", Axis::Height,
       room.eased(Axis::Height) + t * 3 + width / 2 + Length::mm(kRim) + Length::nanometres(1)}};
}

std::int64_t shortestBag(const Parameters& p, const Workbench&) { return shortestForHoles(p).nm(); }

/// Beside the seam the holes find room.
std::int64_t widestSeam(const Parameters& p, const Workbench&) {
  const Length half = p.length("length") / 2;
  if (!p.flag("handle-holes")) return (half * 2 - mm(3)).nm();
  return (half - Length::mm(kHolesApart) / 2 - p.length("hole") - Length::mm(kHoleAside)).nm();
}

/// The lower half of the height at least is free of the gussets' diagonals and the holes.
std::int64_t lowestBag(const Parameters& p, const Workbench& m) {
  return std::max(p.length("width").nm() + Length::mm(kRim).nm() + 10'000'000, m.caliper.nm() * 25);
}

}  // namespace

Style gussetedBag() {
  const Length gap = mm(3);
  return {
      .id = "gusseted-bag",
      .title = worded("styles", "Gusseted bag"),
      .summary =
          worded("styles",
                 "Stands on a block bottom, folds flat with it, with holes for a ribbon handle."),
      .traits = {.difficulty = 2,
                 .suits =
                     worded("styles", "Biscuits, coffee, books, several small things at once.")},
      .words = {.stages = {{"open-tube", worded("stages", "open the tube")},
                           {"fold-bag-flat",
                            worded("stages", "fold the sides in and the bag flat")},
                           {"open-bag", worded("stages", "open the bag")}},
                .panels = {{"back-foot", worded("panels", "back foot")},
                           {"left-foot", worded("panels", "left foot")},
                           {"left-back-foot", worded("panels", "left back foot")},
                           {"right-foot", worded("panels", "right foot")},
                           {"right-back-foot", worded("panels", "right back foot")},
                           {"left-front", worded("panels", "left front half")},
                           {"right-front", worded("panels", "right front half")}},
                .pieces = {{"bag", worded("pieces", "bag")}}},
      .parameters =
          {measure(
               "length", worded("styles", "Length"),
               worded("styles",
                      "Of front and back, along the bottom. Seam and holes must fit side by side."))
               .standard(mm(110))
               .from(greatest(greatest(mm(30), plus(smallestFlap(), gap)), shortestBag))
               .to(kLargestSide),
           measure(
               "width", worded("styles", "Width"),
               worded("styles",
                      "Of the sides, which fold in along the middle; no wider than the length."))
               .standard(mm(60))
               .from(mm(25))
               .to(otherPlus("length")),
           measure(
               "height", worded("styles", "Height"),
               worded("styles",
                      "At least the width and 30 mm, so that the gussets and the holes find room."))
               .standard(mm(180))
               .from(lowestBag)
               .to(mm(1500)),
           toggle("handle-holes", worded("styles", "Handle holes"),
                  worded("styles", "Two in front and back, for a ribbon."))
               .on(),
           measure(
               "hole", worded("styles", "Hole"),
               worded("styles",
                      "Across a hole, at most a fifth of the length and a third of the height."))
               .standard(mm(5))
               .from(mm(3))
               .to(least(partOf("length", 5), partOf("height", 3))),
           measure("seam", worded("styles", "Glue seam"),
                   worded("styles", "Joins the left side to the front, beside the holes."))
               .standard(mm(12))
               .from(smallestFlap())
               .to(widestSeam)
               .givesWay()},
      .needs = bagNeeds,
      .build = buildBag,
  };
}

}  // namespace creasewright
