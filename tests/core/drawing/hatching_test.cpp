#include "drawing/hatching.h"

#include <cmath>

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

double totalLength(const std::vector<Segment>& lines) {
  double sum = 0;
  for (const Segment& line : lines) sum += length(line);
  return sum;
}

TEST(Hatching, LineLengthTimesSpacingIsTheArea) {
  // The sum over parallel lines is a midpoint rule for the area; with holes the even-odd rule.
  const Polygon outer{{0, 0}, {40, 0}, {40, 30}, {0, 30}};
  const Polygon hole{{10, 10}, {10, 20}, {25, 20}, {25, 10}};
  for (const double degrees : {0.0, 30.0, 45.0, -45.0, 90.0}) {
    const double spacing = 0.1;
    EXPECT_NEAR(totalLength(hatch({outer}, spacing, degrees)) * spacing, 1200, 8) << degrees;
    EXPECT_NEAR(totalLength(hatch({outer, hole}, spacing, degrees)) * spacing, 1050, 8) << degrees;
  }
}

TEST(Hatching, MiddlesLieInsideAndOutsideOfHoles) {
  testing::Random random(11);
  for (int round = 0; round < 50; ++round) {
    std::vector<Point> points;
    for (int i = 0; i < 8; ++i) points.push_back({random.between(0, 50), random.between(0, 50)});
    const Polygon shape = convexHull(points);
    const std::vector<Segment> lines = hatch({shape}, 1, random.between(-90, 90));
    EXPECT_FALSE(lines.empty());
    for (const Segment& line : lines) {
      EXPECT_NE(locate((line.a + line.b) / 2, shape, 1e-6), Side::Outside);
    }
  }
}

TEST(Hatching, LinesOfNeighboursMeet) {
  const std::vector<Segment> left = hatch({{{0, 0}, {10, 0}, {10, 10}, {0, 10}}}, 2, 45);
  const std::vector<Segment> right = hatch({{{10, 0}, {20, 0}, {20, 10}, {10, 10}}}, 2, 45);
  int met = 0;
  for (const Segment& a : left) {
    for (const Segment& b : right) met += distance(a.b, b.a) < 1e-9 ? 1 : 0;
  }
  EXPECT_GE(met, 3);
}

TEST(Hatching, NothingToFillGivesNoLines) {
  EXPECT_TRUE(hatch({}, 2, 45).empty());
  EXPECT_TRUE(hatch({{{0, 0}, {10, 0}, {10, 10}}}, 0, 45).empty());
}

}  // namespace
}  // namespace creasewright
