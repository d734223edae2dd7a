#include "drawing/spread.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

TEST(Spread, LeavesAloneWhatIsFarEnoughApart) {
  const std::vector<double> far{0, 5, 10.5};
  EXPECT_EQ(spreadApart(far, 5), far);
}

TEST(Spread, KeepsTheGapOrderAndMiddle) {
  testing::Random random(5);
  for (int round = 0; round < 100; ++round) {
    std::vector<double> at;
    for (int i = random.whole(1, 20); i > 0; --i) at.push_back(random.between(0, 40));
    std::sort(at.begin(), at.end());
    const std::vector<double> moved = spreadApart(at, 3);
    ASSERT_EQ(moved.size(), at.size());
    double drift = 0;
    for (std::size_t i = 0; i < at.size(); ++i) {
      drift += moved[i] - at[i];
      if (i == 0) continue;
      EXPECT_GE(moved[i] - moved[i - 1], 3 - 1e-9);
    }
    EXPECT_NEAR(drift, 0, 1e-9);  // least squares moves the mean nowhere
  }
}

TEST(Spread, TwoCloseOnesPartEvenly) {
  const std::vector<double> moved = spreadApart({10, 10}, 4);
  EXPECT_NEAR(moved[0], 8, 1e-12);
  EXPECT_NEAR(moved[1], 12, 1e-12);
}

}  // namespace
}  // namespace creasewright
