#include "cutting/strip_layout.h"

#include <gtest/gtest.h>

#include "core/cutting/random_cuts.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

using testing::blanksIn;
using testing::mm;
using testing::treeFault;

/// Mats of three sizes, once cut in twenty-two settings from an all but empty sheet.
TEST(StripLayout, ManySmallBlanksTakeFewSettings) {
  Work work(1e12);
  const std::vector<BlankDemand> demands{
      {"f", mm(58.76), mm(120), 6}, {"h", mm(34), mm(120), 8}, {"i", mm(58.52), mm(34), 9}};
  const auto strips = stripLayout(mm(320), mm(450), demands, {6, 8, 9}, work);
  ASSERT_TRUE(strips);
  EXPECT_EQ(treeFault(*strips), "");
  EXPECT_EQ(blanksIn(*strips).size(), 23U);
  EXPECT_LE(trimSteps({0, 1, *strips}).size(), 8U);
}

TEST(StripLayout, MakesExactlyTheBlanksAskedForOrNone) {
  Work work(1e12);
  testing::Random random(631);
  int found = 0;
  for (int round = 0; round < 120; ++round) {
    std::vector<BlankDemand> demands;
    std::vector<int> counts;
    const int kinds = random.whole(1, 7);
    for (int k = 0; k < kinds; ++k) {
      counts.push_back(random.whole(1, 5));
      demands.push_back({std::to_string(k), mm(random.whole(20, 120)), mm(random.whole(20, 120)),
                         counts.back(), random.whole(0, 1) == 1});
    }
    const auto strips = stripLayout(mm(300), mm(400), demands, counts, work);
    if (!strips) continue;
    ++found;
    testing::expectExactly(*strips, mm(300), mm(400), demands);
  }
  EXPECT_GT(found, 30);
}

/// Strips that fill the sheet exactly leave no offcut.
TEST(StripLayout, ExactStripsLeaveNothing) {
  Work work(1e12);
  const std::vector<BlankDemand> demands{{"a", mm(100), mm(150), 6, false}};
  const auto strips = stripLayout(mm(300), mm(300), demands, {6}, work);
  ASSERT_TRUE(strips);
  eachNode(*strips, [](const CutNode& node) { EXPECT_NE(node.kind, CutNode::Kind::Offcut); });
  EXPECT_EQ(trimSteps({0, 1, *strips}).size(), 2U);
  EXPECT_FALSE(stripLayout(mm(299), mm(300), demands, {6}, work));
}

}  // namespace
}  // namespace creasewright
