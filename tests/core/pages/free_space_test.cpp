#include "pages/free_space.h"

#include <optional>

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

TEST(FreeSpace, FindsTheNearestPlaceThatTouchesNothing) {
  testing::Random random(8);
  for (int round = 0; round < 30; ++round) {
    FreeSpace space(60, 40);
    std::vector<Bounds> blocked;
    for (int i = 0; i < 6; ++i) {
      const Point low{random.between(0, 50), random.between(0, 30)};
      blocked.push_back({low, low + Point{random.between(1, 12), random.between(1, 12)}});
      space.block(blocked.back());
    }
    const Point wish{random.between(0, 40), random.between(0, 30)};
    const auto at = space.find(8, 5, {{0, 0}, {60, 40}}, wish);
    if (!at) continue;
    const Bounds found{*at, *at + Point{8, 5}};
    for (const Bounds& box : blocked) {
      EXPECT_TRUE(found.high.x <= box.low.x || box.high.x <= found.low.x ||
                  found.high.y <= box.low.y || box.high.y <= found.low.y);
    }
    EXPECT_GE(found.low.x, 0);
    EXPECT_LE(found.high.x, 60);
  }
}

/// Every place tried one after the other, from the lower left on.
std::optional<Point> plainFind(const FreeSpace& space, double width, double height,
                               const Bounds& within, Point wish) {
  std::optional<Point> best;
  for (double y = within.low.y; y + height <= within.high.y; y += 1)
    for (double x = within.low.x; x + width <= within.high.x; x += 1) {
      if (!space.isFree({{x, y}, {x + width, y + height}})) continue;
      if (!best || distance(Point{x, y}, wish) < distance(*best, wish)) best = Point{x, y};
    }
  return best;
}

TEST(FreeSpace, FindsWhatTryingEveryPlaceFinds) {
  testing::Random random(88);
  int found = 0;
  for (int round = 0; round < 300; ++round) {
    FreeSpace space(150, 60);
    for (int i = random.whole(0, 25); i > 0; --i) {
      const Point low{random.between(-5, 145), random.between(-5, 55)};
      space.block({low, low + Point{random.between(1, 30), random.between(1, 12)}});
    }
    const Bounds within{{random.between(0, 20), random.between(0, 10)},
                        {random.between(100, 150), random.between(40, 60)}};
    const double width = random.between(1, 95);
    const double height = random.between(1, 20);
    const Point wish{random.between(-10, 160), random.between(-10, 70)};
    const auto told = space.find(width, height, within, wish);
    const auto plain = plainFind(space, width, height, within, wish);
    ASSERT_EQ(told.has_value(), plain.has_value());
    if (!told) continue;
    ++found;
    EXPECT_NEAR(distance(*told, wish), distance(*plain, wish), 1e-9);
    EXPECT_TRUE(space.isFree({*told, *told + Point{width, height}}));
  }
  EXPECT_GT(found, 100);
}

TEST(FreeSpace, SaysWhenThereIsNoRoom) {
  FreeSpace space(20, 20);
  space.blockLine({{0, 10}, {20, 10}});
  EXPECT_FALSE(space.find(5, 15, {{0, 0}, {20, 20}}, {0, 0}).has_value());
  EXPECT_TRUE(space.find(5, 9, {{0, 0}, {20, 20}}, {0, 0}).has_value());
}

}  // namespace
}  // namespace creasewright
