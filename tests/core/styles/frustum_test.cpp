#include "styles/parts/frustum.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "net/pose.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

struct Slope {
  Frustum frustum;
  double slope, slant, corner, seamFold, fanTotal;
};

// n, bottom edge, top edge, height; derived from coordinates and checked against the handbook
// formulas of the frustum's lateral area (vias.org, comp_geometry, geom_3d_pyramid_frustum).
// Degrees and mm.
const Slope kSlopes[] = {
    {{4, 100, 60, 80, 0, 0}, 75.9638, 82.4621, 76.3670, 86.6277, 109.0642},
    {{6, 50, 30, 60, 0, 0}, 73.8979, 62.4500, 80.9026, 57.4210, 109.1692},
    {{5, 40, 25, 70, 0, 0}, 81.6111, 70.7571, 83.9494, 71.1117, 60.5056},
    {{4, 100, 0, 80, 0, 0}, 57.9946, 94.3398, 62.0765, 73.6861, 223.3883},
    {{3, 60, 0, 48.9898, 0, 0}, 70.5288, 51.9615, 60, 109.4712, 180},
};

TEST(Frustum, HasTheHandbookAngles) {
  for (const Slope& row : kSlopes) {
    const Frustum& f = row.frustum;
    EXPECT_NEAR(f.slope(), row.slope, 1e-4);
    EXPECT_NEAR(f.slant(), row.slant, 1e-4);
    EXPECT_NEAR(90 + f.fanAngle() / 2, row.corner, 1e-4);
    EXPECT_NEAR(f.seamFold(), row.seamFold, 1e-4);
    EXPECT_NEAR(-f.fanAngle() * f.sides, row.fanTotal, 1e-3);
  }
}

/// The last wall's free edge comes to lie on the first wall's: the folds between walls are right.
TEST(Frustum, WallsCloseInARing) {
  for (const Frustum& f : {Frustum{4, 100, 60, 80, 8, 8}, Frustum{6, 50, 30, 60, 8, 8},
                           Frustum{5, 25, 40, 70, 8, 8}, Frustum{12, 40, 40, 50, 8, 6}}) {
    NetBuilder builder({"seam", "walls", "tabs", "base"});
    addFrustumWalls(builder, f, 2);
    addFrustumBase(builder, f, 3, 4);
    const Net net = builder.take();
    const Pose folded = pose(net, 1.0);
    const Polygon wall = frustumWall(f).outline;
    const auto seam = static_cast<std::size_t>(*net.find("seam"));
    // The seam's crease runs along the first wall's left edge, from its foot to its head.
    const Point3 foot = folded[seam].apply(Point{f.ridge(), 0});
    const Point3 head = folded[seam].apply(Point{0, 0});
    EXPECT_NEAR(norm(foot - Point3{wall[0].x, wall[0].y, 0}), 0, 1e-6);
    EXPECT_NEAR(norm(head - Point3{wall[3].x, wall[3].y, 0}), 0, 1e-6);
  }
}

/// The smallest hexagon about a square is found by brute force over apothems.
TEST(RegularPolygon, HoldsTheRectangleItIsDrawnRound) {
  for (int sides = 3; sides <= 12; ++sides) {
    const double apothem = apothemAround(sides, 70, 40);
    const Polygon outline = regularPolygon(sides, sideOf(sides, apothem)).outline;
    const Point middle{sideOf(sides, apothem) / 2, apothem};
    bool touches = false;
    for (const Point corner : {Point{35, 20}, Point{-35, 20}, Point{35, -20}, Point{-35, -20}}) {
      EXPECT_NE(locate(middle + corner, outline, 1e-6), Side::Outside) << sides;
      touches = touches || locate(middle + corner, outline, 1e-6) == Side::Boundary;
    }
    EXPECT_TRUE(touches) << sides;
    EXPECT_NEAR(apothemOf(sides, sideOf(sides, apothem)), apothem, 1e-9);
  }
}

}  // namespace
}  // namespace creasewright
