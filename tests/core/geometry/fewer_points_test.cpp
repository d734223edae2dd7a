#include "geometry/fewer_points.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

double offRing(Point p, const Polygon& ring) {
  double nearest = 1e9;
  for (std::size_t i = 0; i < ring.size(); ++i)
    nearest = std::min(nearest, distanceToSegment(p, {ring[i], ring[(i + 1) % ring.size()]}));
  return nearest;
}

/// Law: every corner of a wobbling round ring stays within the tolerance of what is left, which has
/// only corners of the ring, and far fewer of a smooth one.
TEST(FewerPoints, WhatIsLeftPassesWithinTheToleranceOfEveryCorner) {
  testing::Random random(5);
  for (int run = 0; run < 100; ++run) {
    const double wobble = run % 2 == 0 ? 0 : random.between(0, 0.4);
    const double tolerance = random.between(0.005, 0.3);
    Polygon ring;
    for (int i = 0; i < 200; ++i) {
      const double angle = 2 * std::numbers::pi * i / 200;
      const double radius = 10 + random.between(-wobble, wobble);
      ring.push_back({radius * std::cos(angle), radius * std::sin(angle)});
    }
    const Polygon fewer = fewerPoints(ring, tolerance);
    for (const Point& p : ring) EXPECT_LE(offRing(p, fewer), tolerance + 1e-9);
    for (const Point& p : fewer) EXPECT_EQ(std::ranges::count(ring, p), 1);
    if (wobble == 0 && tolerance > 0.05) {
      EXPECT_LT(fewer.size(), 60u);
    }
  }
}

TEST(FewerPoints, CornersOfARectangleStayAndAHairVanishes) {
  const Polygon square{{0, 0}, {5, 0}, {10, 0}, {10, 10}, {0, 10}};
  EXPECT_EQ(fewerPoints(square, 0.1), (Polygon{{0, 0}, {10, 0}, {10, 10}, {0, 10}}));
  EXPECT_TRUE(fewerPoints({{0, 0}, {10, 0}, {10, 0.01}, {0, 0.01}}, 0.1).empty());
  EXPECT_TRUE(fewerPoints({{0, 0}, {1, 1}}, 0.1).empty());
}

}  // namespace
}  // namespace creasewright
