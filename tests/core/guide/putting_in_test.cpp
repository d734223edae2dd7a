#include "guide/putting_in.h"

#include <cmath>
#include <iostream>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "folding/loop_closure.h"

namespace creasewright {
namespace {

/// Whether a point lies within a ring: how often a ray to the right crosses it.
bool within(const Polygon& ring, Point p) {
  bool inside = false;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i];
    const Point b = ring[(i + 1) % ring.size()];
    if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x))
      inside = !inside;
  }
  return inside;
}

/// Points of all panels 2 mm apart, in space; none of those that the space reaches through.
std::vector<Point3> cardOf(const BuiltPiece& piece, const Pose& pose) {
  std::vector<Point3> points;
  for (std::size_t i = 0; i < piece.net.panels.size(); ++i) {
    const Panel& panel = piece.net.panels[i];
    const auto& through = piece.cavity->through;
    if (std::ranges::find(through, panel.id) != through.end()) continue;
    const Bounds box = bounds(panel.outline);
    for (double x = box.low.x + 1; x < box.high.x; x += 2)
      for (double y = box.low.y + 1; y < box.high.y; y += 2)
        if (within(panel.outline, {x, y})) points.push_back(pose[i].apply(Point{x, y}));
  }
  return points;
}

double size(const CavityBox& box, int axis) {
  return axis == 0   ? box.high.x - box.low.x
         : axis == 1 ? box.high.y - box.low.y
                     : box.high.z - box.low.z;
}

double at(Point3 p, int axis) { return axis == 0 ? p.x : axis == 1 ? p.y : p.z; }

/// How the product goes in, as carried out.
struct Way {
  Transform frame;
  Point3 from;  // of its middle, in the frame of the space
  Point3 to;
  int axis = 0;
};

std::optional<Way> wayOf(const BuiltPiece& piece, const PuttingIn& putting, const Pose& placed) {
  const auto panel = static_cast<std::size_t>(*piece.net.find(piece.cavity->panel));
  Way way{placed[panel], {}, {}, -1};
  const Transform into = way.frame.inverse();
  way.from = into.apply(putting.from);
  way.to = into.apply(putting.to);
  int axes = 0;
  for (int axis = 0; axis < 3; ++axis) {
    if (std::abs(at(way.from, axis) - at(way.to, axis)) < 1e-6) continue;
    way.axis = axis;
    ++axes;
  }
  if (axes != 1) return std::nullopt;
  return way;
}

// Law: in every style the product goes in along one axis of its space, starts wholly outside of it,
// near enough for one picture, and on its way there meets no card (points of the panels, 2 mm
// apart; the outer tenth of the space may touch).
TEST(PuttingIn, TheWayIsFreeAndStartsOutsideTheSpace) {
  int ways = 0;
  for (const Style& style : styles()) {
    for (const char* product : {"box:60x35x120mm", "box:105x70x22mm"}) {
      const auto design = newDesign(style.id, *parseProduct(product), *findCard("300gsm"),
                                    Ease::Easy, ToolGrid::millimetre());
      const auto built = design ? build(*design) : Result<BuiltDesign>(design.problem());
      if (!built) continue;
      const auto holder = productHolder(*built);
      if (!holder || !holder->putting.holds) continue;
      const PuttingIn& putting = holder->putting;
      const BuiltPiece& piece = built->pieces[static_cast<std::size_t>(holder->piece)];
      const int stages = piece.net.stageCount();
      const double progress = stages == 0 ? 1 : static_cast<double>(putting.after) / stages;
      const auto found = FoldPath(piece.net).pose(progress);
      const Pose placed = found ? *found : pose(piece.net, progress);
      const auto way = wayOf(piece, putting, placed);
      ASSERT_TRUE(way) << style.id << ": not along one axis";
      const double gone = std::abs(at(way->from, way->axis) - at(way->to, way->axis));
      const double along = size(piece.cavityBox, way->axis);
      EXPECT_GE(gone, 0.8 * along) << style.id << ": starts within its space";
      EXPECT_LE(gone, 2 * along + 60) << style.id << ": out of the picture";
      const Transform into = way->frame.inverse();
      int met = 0;
      for (const Point3& card : cardOf(piece, placed)) {
        const Point3 p = into.apply(card);
        bool inside = true;
        for (int axis = 0; axis < 3 && inside; ++axis) {
          const double half = 0.35 * size(piece.cavityBox, axis);
          double low = std::min(at(way->to, axis), at(way->from, axis));
          double high = std::max(at(way->to, axis), at(way->from, axis));
          inside = at(p, axis) > low - half && at(p, axis) < high + half;
        }
        met += inside ? 1 : 0;
      }
      EXPECT_EQ(met, 0) << style.id << ' ' << product << ": card in the way";
      ++ways;
    }
  }
  std::cout << ways << " ways\n";
  EXPECT_GT(ways, 30);
}

}  // namespace
}  // namespace creasewright
