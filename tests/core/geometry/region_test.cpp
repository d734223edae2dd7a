#include "geometry/region.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

Polygon box(double x, double y, double w, double h) {
  return {{x, y}, {x + w, y}, {x + w, y + h}, {x, y + h}};
}

bool inside(Point p, const Region& region) {
  for (const Area& part : region) {
    bool in = locate(p, part.outer) == Side::Inside;
    for (const Polygon& hole : part.holes) in = in && locate(p, hole) == Side::Outside;
    if (in) return true;
  }
  return false;
}

TEST(Region, UnionOfPanelsThatShareAnEdgeIsOneOutline) {
  const Region both = unite({box(0, 0, 10, 5), box(10, 0, 5, 5)});
  ASSERT_EQ(both.size(), 1U);
  EXPECT_EQ(both[0].outer.size(), 4U);
  EXPECT_NEAR(area(both), 75, 1e-9);
}

TEST(Region, SubtractingFromTheMiddleLeavesAHole) {
  const Region ring = subtract(region(box(0, 0, 10, 10)), region(box(4, 4, 2, 2)));
  ASSERT_EQ(ring.size(), 1U);
  ASSERT_EQ(ring[0].holes.size(), 1U);
  EXPECT_NEAR(area(ring), 96, 1e-9);
}

TEST(Region, OffsetKeepsMitredCorners) {
  EXPECT_NEAR(area(offset(region(box(0, 0, 10, 6)), -1)), 8 * 4, 1e-6);
  EXPECT_NEAR(area(offset(region(box(0, 0, 10, 6)), 1)), 12 * 8, 1e-6);
  EXPECT_TRUE(offset(region(box(0, 0, 10, 2)), -1.01).empty());
}

/// Every operation against its definition, point by point.
TEST(Region, OperationsAgreeWithPointMembership) {
  testing::Random random(31);
  for (int round = 0; round < 40; ++round) {
    const auto some = [&random] {
      return unite({box(random.between(0, 9), random.between(0, 9), random.between(1, 6), 4),
                    box(random.between(0, 9), random.between(0, 9), 3, random.between(1, 6))});
    };
    const Region a = some();
    const Region b = some();
    const Region both = intersect(a, b);
    const Region onlyA = subtract(a, b);
    EXPECT_NEAR(area(both) + area(onlyA), area(a), 1e-6);
    for (int i = 0; i < 100; ++i) {
      const Point p{random.between(0, 15), random.between(0, 15)};
      EXPECT_EQ(inside(p, both), inside(p, a) && inside(p, b));
      EXPECT_EQ(inside(p, onlyA), inside(p, a) && !inside(p, b));
    }
  }
}

/// Found by folding a snap-lock bottom: a cut that leaves two corners a nanometre apart lost both.
TEST(Region, OfTwoCornersANanometreApartOneStays) {
  const double hair = 1e-6;
  const Polygon nicked{{0, 0}, {40, 0}, {40, 30}, {40 - hair, 30 + hair}, {0, 30}};
  for (std::size_t start = 0; start < nicked.size(); ++start) {
    Polygon turned = nicked;
    std::rotate(turned.begin(), turned.begin() + static_cast<std::ptrdiff_t>(start), turned.end());
    EXPECT_NEAR(area(region(turned)), 1200, 1e-3);
  }
}

/// Whether the openings lie plainly inside or not, one by one or together, the area is that of the
/// plane's points that lie in the whole and in no opening.
TEST(Region, OpeningsAreCutOutWhereverTheyLie) {
  testing::Random random(412);
  int apart = 0;
  for (int round = 0; round < 300; ++round) {
    const Polygon whole{{0, 0}, {40, 0}, {40, 30}, {20, random.between(10, 30)}, {0, 30}};
    std::vector<Polygon> openings;
    for (int i = random.whole(1, 4); i > 0; --i) {
      openings.push_back(ellipse({random.between(-2, 42), random.between(-2, 32)},
                                 random.between(1, 5), random.between(1, 5)));
      if (random.whole(0, 1) == 0) std::ranges::reverse(openings.back());
    }
    const Region cut = cutOut(region(whole), openings);
    apart += cut.size() == 1 && cut.front().holes.size() == openings.size() ? 1 : 0;
    EXPECT_NEAR(area(cut), area(subtract(region(whole), unite(openings))), 1e-4) << round;
    for (int sample = 0; sample < 50; ++sample) {
      const Point p{random.between(0, 40), random.between(0, 30)};
      const auto in = [&](const Polygon& ring) { return locate(p, ring, 1e-4) == Side::Inside; };
      const auto on = [&](const Polygon& ring) { return locate(p, ring, 1e-4) == Side::Boundary; };
      if (on(whole) || std::ranges::any_of(openings, on)) continue;
      bool covered = false;
      for (const Area& part : cut)
        covered = covered || (in(part.outer) && std::ranges::none_of(part.holes, in));
      EXPECT_EQ(covered, in(whole) && std::ranges::none_of(openings, in)) << round;
    }
    for (const Area& part : cut) {
      EXPECT_GT(signedArea(part.outer), 0);
      for (const Polygon& hole : part.holes) EXPECT_LT(signedArea(hole), 0);
    }
  }
  EXPECT_GT(apart, 30);
}

}  // namespace
}  // namespace creasewright
