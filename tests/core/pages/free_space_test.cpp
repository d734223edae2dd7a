#include "pages/free_space.h"

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

TEST(FreeSpace, SaysWhenThereIsNoRoom) {
  FreeSpace space(20, 20);
  space.blockLine({{0, 10}, {20, 10}});
  EXPECT_FALSE(space.find(5, 15, {{0, 0}, {20, 20}}, {0, 0}).has_value());
  EXPECT_TRUE(space.find(5, 9, {{0, 0}, {20, 20}}, {0, 0}).has_value());
}

}  // namespace
}  // namespace creasewright
