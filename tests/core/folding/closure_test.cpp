#include <gtest/gtest.h>

#include "core/folding/test_nets.h"

namespace creasewright {
namespace {

struct SpaceSegment {
  Point3 a;
  Point3 b;
};

/// Every panel edge of the pose that is no crease, both ends placed in space.
std::vector<SpaceSegment> freeEdges(const Net& net, const Pose& folded) {
  std::vector<SpaceSegment> found;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Polygon& outline = net.panels[i].outline;
    for (std::size_t k = 0; k < outline.size(); ++k) {
      const Point a = outline[k];
      const Point b = outline[(k + 1) % outline.size()];
      bool crease = false;
      for (const Crease& fold : net.creases) {
        const Segment own = fold.parent == static_cast<int>(i)
                                ? fold.onParent
                                : Segment{{0, 0}, {length(fold.onParent), 0}};
        if (fold.parent != static_cast<int>(i) && fold.child != static_cast<int>(i)) continue;
        crease = crease || (distance(a, own.a) < 1e-6 && distance(b, own.b) < 1e-6);
      }
      if (!crease) found.push_back({folded[i].apply(a), folded[i].apply(b)});
    }
  }
  return found;
}

/// Every free edge lies on exactly one other, run the other way, within 1e-6 mm.
void expectClosed(const Net& net, std::size_t edgeCount) {
  const std::vector<SpaceSegment> edges = freeEdges(net, pose(net, 1));
  EXPECT_EQ(edges.size(), edgeCount);
  for (const SpaceSegment& edge : edges) {
    int partners = 0;
    for (const SpaceSegment& other : edges)
      if (distance(edge.a, other.b) < 1e-6 && distance(edge.b, other.a) < 1e-6) ++partners;
    EXPECT_EQ(partners, 1);
  }
}

/// sin(dih/2) = cos(pi/q) / sin(pi/p) for faces of p corners, q at a corner of the solid.
/// Source: the classical formula for Platonic solids, from memory; derived anew
/// from coordinates in DihedralFormula below.
double dihedralDegrees(int p, int q) {
  const double pi = std::numbers::pi;
  return 2 * std::asin(std::cos(pi / q) / std::sin(pi / p)) * 180 / pi;
}

TEST(Closure, DihedralFormula) {
  // Tetrahedron from alternate corners of a cube: the angle between two face normals, which the
  // corners (1,1,1), (1,-1,-1), (-1,1,-1), (-1,-1,1) give as 180 - acos(1/3).
  const Point3 a{1, 1, 1};
  const Point3 b{1, -1, -1};
  const Point3 c{-1, 1, -1};
  const Point3 d{-1, -1, 1};
  const Point3 first = unit(cross(b - a, c - a));
  const Point3 second = unit(cross(d - a, b - a));
  const double between = std::acos(dot(first, second)) * 180 / std::numbers::pi;
  EXPECT_NEAR(dihedralDegrees(3, 3), 180 - between, 1e-9);
  EXPECT_NEAR(dihedralDegrees(3, 3), 70.5288, 1e-4);
  EXPECT_NEAR(dihedralDegrees(4, 3), 90, 1e-9);
}

TEST(Closure, CubeNetCloses) {
  NetBuilder builder = testing::plainTray(50, 50, 50);
  builder.hinge({"back", "outer"}, "lid", rectangle(50, 50), {180 - dihedralDegrees(4, 3), 1});
  expectClosed(builder.take(), 14);
}

TEST(Closure, TetrahedronNetCloses) {
  const double side = 60;
  const Shape triangle{{{0, 0}, {side, 0}, {side / 2, side * std::sqrt(3) / 2}},
                       {"inner", "right", "left"}};
  const double fold = 180 - dihedralDegrees(3, 3);
  NetBuilder builder({"sides"});
  builder.root("base", triangle);
  builder.hinge({"base", "inner"}, "a", triangle, {fold, 1});
  builder.hinge({"base", "right"}, "b", triangle, {fold, 1});
  builder.hinge({"base", "left"}, "c", triangle, {fold, 1});
  const Net net = builder.take();
  expectClosed(net, 6);
  // Height of the regular tetrahedron: sqrt(2/3) of its side.
  EXPECT_NEAR(pose(net, 1)[1].apply(triangle.outline[2]).z, side * std::sqrt(2.0 / 3), 1e-6);
}

TEST(Closure, OneDegreeLessStaysOpen) {
  NetBuilder builder = testing::plainTray(50, 50, 50);
  builder.hinge({"back", "outer"}, "lid", rectangle(50, 50), {89, 1});
  const Net net = builder.take();
  const std::vector<SpaceSegment> edges = freeEdges(net, pose(net, 1));
  int open = 0;
  for (const SpaceSegment& edge : edges) {
    int partners = 0;
    for (const SpaceSegment& other : edges)
      if (distance(edge.a, other.b) < 1e-6 && distance(edge.b, other.a) < 1e-6) ++partners;
    if (partners != 1) ++open;
  }
  EXPECT_EQ(open, 6);
}

/// Seam fold of a right frustum tray: sin(psi/2) = sin(beta) sin(pi/n), beta the wall's slope;
/// derived from coordinates, no published source; value 86.6277 for n = 4, b = 100, t = 60, h = 80.
TEST(Closure, TaperedTrayWallsMeet) {
  const Net net = testing::taperedTray(100, 60, 80);
  const Pose folded = pose(net, 1);
  const Polygon& wall = net.panels[1].outline;
  EXPECT_LT(distance(folded[1].apply(wall[2]), folded[4].apply(wall[3])), 1e-6);
  EXPECT_NEAR(folded[1].apply(wall[2]).z, 80, 1e-6);
  const double seam =
      std::acos(dot(folded[1].normal(), folded[4].normal())) * 180 / std::numbers::pi;
  EXPECT_NEAR(seam, 86.6277, 1e-4);
}

}  // namespace
}  // namespace creasewright
