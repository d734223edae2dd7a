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

// Two edges of a dodecahedron's net, 169.956312 mm long, that lie on one line but for rounding.
TEST(Polygon, EdgesOnOneLineFarApartDoNotMeet) {
  EXPECT_TRUE(isSimple({{0, 423.17392975380278},
                        {52.519388709290752, 261.53587174071055},
                        {100, 261},
                        {84.978155999999899, 161.63805801309226},
                        {137.49754470929065, 2.8421709430404007e-14},
                        {-50, -10},
                        {-50, 430}}));
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
    // A sliver may be either.
    const auto isSliver = [](double size) { return size > 1e-9 && size < 1e-3; };
    if (!isSliver(outside)) {
      EXPECT_EQ(liesWellInside(a, b, 0), outside < 1e-9) << i;
    }
    if (!isSliver(common)) {
      EXPECT_EQ(partedByEdge(a, b, 0), common < 1e-9) << i;
    }
    inside += liesWellInside(a, b, 0) ? 1 : 0;
    parted += partedByEdge(a, b, 0) ? 1 : 0;
  }
  EXPECT_GT(inside, 10);
  EXPECT_GT(parted, 50);
  // In the nook of an L nothing is said; past a slack it is.
  const Polygon angle{{0, 0}, {4, 0}, {4, 1}, {1, 1}, {1, 4}, {0, 4}};
  EXPECT_FALSE(liesWellInside({{2, 0.2}, {3, 0.2}, {3, 0.8}}, angle, 0));
  EXPECT_FALSE(liesWellInside({{0.2, 0.2}, {1.2, 0.2}, {0.2, 0.8}}, angle, 0.1));
  EXPECT_TRUE(liesWellInside({{0.2, 0.2}, {1.2, 0.2}, {0.2, 0.8}}, angle, 0.3));
}

/// Against every pair of edges that are not neighbours, met by the signs of four turns: rings of
/// few corners in any order, and bows and stars that turn one way but more than once.
TEST(Polygon, SimpleIsWhereNoPairOfEdgesCrosses) {
  testing::Random random(413);
  const auto crosses = [](const Segment& s, const Segment& t) {
    const auto side = [](const Segment& l, Point p) { return cross(l.b - l.a, p - l.a) > 0; };
    return side(s, t.a) != side(s, t.b) && side(t, s.a) != side(t, s.b);
  };
  int simple = 0;
  for (int round = 0; round < 3000; ++round) {
    const int n = random.whole(3, 7);
    const int step = random.whole(1, 2);  // two: a star
    const bool ordered = random.whole(0, 1) == 0;
    Polygon ring;
    for (int i = 0; i < n; ++i) {
      const double turn = 2 * 3.14159265 * i * step / n + 0.01;
      ring.push_back(ordered ? Point{std::cos(turn), std::sin(turn)} * random.between(15, 20)
                             : Point{random.between(0, 20), random.between(0, 20)});
    }
    if (ordered && step == 2 && n % 2 == 0) continue;  // corners meet
    bool meets = false;
    for (int i = 0; i < n; ++i)
      for (int k = i + 2; k < n; ++k) {
        if (i == 0 && k + 1 == n) continue;
        const auto edge = [&](int at) {
          return Segment{ring[static_cast<std::size_t>(at)],
                         ring[static_cast<std::size_t>((at + 1) % n)]};
        };
        meets = meets || crosses(edge(i), edge(k));
      }
    EXPECT_EQ(isSimple(ring), !meets) << round;
    simple += meets ? 0 : 1;
  }
  EXPECT_GT(simple, 1000);
  EXPECT_LT(simple, 2600);
}

}  // namespace
}  // namespace creasewright
