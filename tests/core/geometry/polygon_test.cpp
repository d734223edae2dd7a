#include "geometry/polygon.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "geometry/region.h"
#include "support/random.h"

namespace creasewright {
namespace {

const Polygon kEll{{0, 0}, {4, 0}, {4, 1}, {1, 1}, {1, 3}, {0, 3}};

TEST(Polygon, AreaIsPositiveCounterClockwise) {
  EXPECT_DOUBLE_EQ(signedArea(kEll), 6);
  Polygon turned = kEll;
  std::ranges::reverse(turned);
  EXPECT_DOUBLE_EQ(signedArea(turned), -6);
  EXPECT_DOUBLE_EQ(perimeter(kEll), 14);
}

TEST(Polygon, CentroidBalancesTheParts) {
  // Two rectangles: 4 x 1 about (2, 0.5) and 1 x 2 about (0.5, 2).
  const Point c = centroid(kEll);
  EXPECT_NEAR(c.x, (4 * 2 + 2 * 0.5) / 6, 1e-12);
  EXPECT_NEAR(c.y, (4 * 0.5 + 2 * 2.0) / 6, 1e-12);
}

TEST(Polygon, LocateAgreesWithCountingAreasOfTheParts) {
  testing::Random random(21);
  for (int i = 0; i < 2000; ++i) {
    const Point p{random.between(-1, 5), random.between(-1, 4)};
    const bool inside =
        (p.x > 0 && p.x < 4 && p.y > 0 && p.y < 1) || (p.x > 0 && p.x < 1 && p.y > 0 && p.y < 3);
    EXPECT_EQ(locate(p, kEll) == Side::Inside, inside) << p.x << ' ' << p.y;
  }
  EXPECT_EQ(locate({2, 1}, kEll), Side::Boundary);
  EXPECT_EQ(locate({2, 1.04}, kEll, 0.05), Side::Boundary);
  EXPECT_EQ(locate({2, 1.06}, kEll, 0.05), Side::Outside);
}

TEST(Polygon, SimpleMeansNoTouchBesidesNeighbours) {
  EXPECT_TRUE(isSimple(kEll));
  EXPECT_FALSE(isSimple({{0, 0}, {2, 2}, {2, 0}, {0, 2}}));          // bow tie
  EXPECT_FALSE(isSimple({{0, 0}, {4, 0}, {4, 2}, {2, 0}, {0, 2}}));  // corner on an edge
  EXPECT_FALSE(isSimple({{0, 0}, {4, 0}, {2, 0}, {2, 2}}));          // folds back
  EXPECT_FALSE(isSimple({{0, 0}, {4, 0}, {2, 0}}));                  // there and back
  EXPECT_FALSE(isSimple({{0, 0}, {2, 0}, {2, 0}}));                  // a corner twice
  EXPECT_FALSE(isSimple({{0, 0}, {1, 0}}));
}

TEST(Polygon, ArcStaysWithinItsTolerance) {
  const Point centre{3, -2};
  const Point from{13, -2};
  for (const double tolerance : {0.5, 0.05, 0.001}) {
    Polyline points = arc(from, centre, 90, tolerance);
    EXPECT_NEAR(distance(points.back(), {3, 8}), 0, 1e-12);
    Point last = from;
    for (const Point& p : points) {
      EXPECT_NEAR(distance(p, centre), 10, 1e-12);
      EXPECT_GE(distance((last + p) / 2, centre), 10 - tolerance - 1e-12);
      last = p;
    }
  }
}

TEST(Polygon, HullHoldsAllPointsAndTurnsLeft) {
  testing::Random random(22);
  std::vector<Point> points;
  for (int i = 0; i < 60; ++i) points.push_back({random.between(0, 9), random.between(0, 9)});
  const Polygon hull = convexHull(points);
  for (std::size_t i = 0; i < hull.size(); ++i) {
    const Point a = hull[i];
    const Point b = hull[(i + 1) % hull.size()];
    for (const Point& p : points) EXPECT_GE(cross(b - a, p - a), -1e-12);
  }
}

TEST(Polygon, ClippingKeepsTheLeftPart) {
  const Polygon left = clipLeftOf({{0, 0}, {4, 0}, {4, 2}, {0, 2}}, {1, 0}, {1, 1});
  EXPECT_DOUBLE_EQ(signedArea(left), 2);
  EXPECT_DOUBLE_EQ(bounds(left).high.x, 1);
}

/// A triangle or square, turned and moved at random about the middle.
Polygon scattered(testing::Random& random) {
  const int corners = random.whole(3, 5);
  const double radius = random.between(1, 12);
  const double turned = random.between(0, 6);
  const Point middle{random.between(-8, 8), random.between(-8, 8)};
  Polygon polygon;
  for (int i = 0; i < corners; ++i) {
    const double a = turned + i * 2 * 3.14159265358979 / corners;
    polygon.push_back(middle + Point{std::cos(a), std::sin(a)} * radius);
  }
  return polygon;
}

/// What the quick tests say of random polygons, areas say too; for convex ones with nothing left
/// over.
TEST(Polygon, QuickTestsAgreeWithAreas) {
  testing::Random random(23);
  int inside = 0;
  int parted = 0;
  for (int i = 0; i < 600; ++i) {
    const Polygon a = scattered(random);
    const Polygon b = scattered(random);
    const double outside = area(subtract(region(a), region(b)));
    const double common = area(intersect(region(a), region(b)));
    EXPECT_EQ(liesWellInside(a, b, 0), outside < 1e-5) << i;
    EXPECT_EQ(partedByEdge(a, b, 0), common < 1e-5) << i;
    inside += liesWellInside(a, b, 0) ? 1 : 0;
    parted += partedByEdge(a, b, 0) ? 1 : 0;
  }
  EXPECT_GT(inside, 20);
  EXPECT_GT(parted, 50);
  // In the nook of an L nothing is said; past a slack it is.
  const Polygon angle{{0, 0}, {4, 0}, {4, 1}, {1, 1}, {1, 4}, {0, 4}};
  EXPECT_FALSE(liesWellInside({{2, 0.2}, {3, 0.2}, {3, 0.8}}, angle, 0));
  EXPECT_FALSE(liesWellInside({{0.2, 0.2}, {1.2, 0.2}, {0.2, 0.8}}, angle, 0.1));
  EXPECT_TRUE(liesWellInside({{0.2, 0.2}, {1.2, 0.2}, {0.2, 0.8}}, angle, 0.3));
}

}  // namespace
}  // namespace creasewright
