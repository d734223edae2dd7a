#include "geometry/apart.h"

#include <gtest/gtest.h>

#include "geometry/region.h"
#include "support/random.h"

namespace creasewright {
namespace {

/// A star of random spikes: simple, with nooks.
Polygon star(testing::Random& random, Point middle, double least, double most) {
  const int corners = random.whole(3, 12);
  Polygon ring;
  for (int i = 0; i < corners; ++i) {
    const double turn = 2 * 3.14159265 * i / corners;
    ring.push_back(middle + Point{std::cos(turn), std::sin(turn)} * random.between(least, most));
  }
  return ring;
}

double gap(const Polygon& a, const Polygon& b) {
  double least = 1e9;
  for (std::size_t i = 0; i < b.size(); ++i)
    for (const Point& p : a)
      least = std::min(least, distanceToSegment(p, {b[i], b[(i + 1) % b.size()]}));
  return least;
}

/// What is said is so, by areas and by the distance of every corner from every edge; and it is said
/// of most that are far inside or outside.
TEST(Apart, WhatIsPlainIsSo) {
  testing::Random random(411);
  int inside = 0;
  int outside = 0;
  for (int round = 0; round < 4000; ++round) {
    const Polygon whole = star(random, {0, 0}, 10, 60);
    const Polygon part = star(random, {random.between(-70, 70), random.between(-70, 70)}, 2, 8);
    const double margin = random.between(0, 4);
    const double common = area(intersect(region(part), region(whole)));
    if (plainlyInside(part, whole, margin)) {
      ++inside;
      EXPECT_NEAR(common, signedArea(part), 1e-3) << round;
    }
    if (plainlyOutside(part, whole, margin)) {
      ++outside;
      EXPECT_NEAR(common, 0, 1e-9) << round;
    }
    if (plainlyInside(part, whole, margin) || plainlyOutside(part, whole, margin)) {
      EXPECT_GE(std::min(gap(part, whole), gap(whole, part)), margin) << round;
    } else {
      // A square round all of it comes near the outline: no farther than its corner.
      EXPECT_LT(gap(part, whole), 30) << round;
    }
  }
  EXPECT_GT(inside, 100);
  EXPECT_GT(outside, 1000);
}

TEST(Apart, ALinePastACornerOfABoxDoesNotMeetIt) {
  const Bounds box{{0, 0}, {2, 1}};
  EXPECT_TRUE(meets({{-1, 0.5}, {3, 0.5}}, box));
  EXPECT_TRUE(meets({{1, 0.5}, {1.1, 0.6}}, box)) << "within";
  EXPECT_TRUE(meets({{-1, 1}, {1, -1}}, box)) << "through the corner";
  EXPECT_FALSE(meets({{-1, 0.9}, {0.95, -1}}, box)) << "past the corner";
  EXPECT_FALSE(meets({{3, 0}, {4, 1}}, box)) << "beside";
}

}  // namespace
}  // namespace creasewright
