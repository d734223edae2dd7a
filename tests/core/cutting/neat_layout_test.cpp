#include "cutting/neat_layout.h"

#include <gtest/gtest.h>

#include "core/cutting/random_cuts.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

using testing::blanksIn;
using testing::mm;
using testing::treeFault;

/// Twelve blanks of 59 x 120 mm on a 12 in sheet: five rows of two and two upright ones beside. The
/// planner had found them in a tangle of eighteen settings.
TEST(NeatLayout, TwelveStripsTakeSixSettings) {
  Work work(1e12);
  const std::vector<BlankDemand> demands{{"mat", mm(59), mm(120), 12}};
  const auto neat = neatLayout(mm(304.8), mm(304.8), demands, {12}, work);
  ASSERT_TRUE(neat);
  EXPECT_EQ(treeFault(*neat), "");
  EXPECT_EQ(blanksIn(*neat).size(), 12U);
  EXPECT_LE(trimSteps({0, 1, *neat}).size(), 6U);
}

/// Rows of one blank: one setting for the rows, one for the blanks.
TEST(NeatLayout, AGridTakesTwoSettings) {
  Work work(1e12);
  const std::vector<BlankDemand> demands{{"card", mm(50), mm(80), 12, false}};
  const auto neat = neatLayout(mm(200), mm(240), demands, {12}, work);
  ASSERT_TRUE(neat);
  const std::vector<TrimStep> steps = trimSteps({0, 1, *neat});
  ASSERT_EQ(steps.size(), 2U);
  EXPECT_EQ(steps[0].cuts, steps[0].pieces - 1);  // the last strip is as wide
  EXPECT_EQ(steps[1].parts, steps[0].pieces);
  EXPECT_EQ(steps[1].pieces * steps[1].parts, 12);
}

TEST(NeatLayout, MakesExactlyTheBlanksAskedForOrNone) {
  Work work(1e12);
  testing::Random random(613);
  int found = 0;
  for (int round = 0; round < 60; ++round) {
    std::vector<BlankDemand> demands;
    std::vector<int> counts;
    const int kinds = random.whole(1, 4);
    for (int k = 0; k < kinds; ++k) {
      demands.push_back({std::to_string(k), mm(random.whole(30, 140)), mm(random.whole(30, 140)), 1,
                         random.whole(0, 1) == 1});
      counts.push_back(random.whole(0, 4));
    }
    if (std::ranges::count(counts, 0) == kinds) continue;
    const auto neat = neatLayout(mm(300), mm(300), demands, counts, work);
    if (!neat) continue;
    ++found;
    for (std::size_t k = 0; k < counts.size(); ++k) demands[k].quantity = counts[k];
    testing::expectExactly(*neat, mm(300), mm(300), demands);
  }
  EXPECT_GT(found, 10);
}

}  // namespace
}  // namespace creasewright
