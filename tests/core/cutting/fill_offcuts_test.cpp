#include "cutting/fill_offcuts.h"

#include <gtest/gtest.h>

#include "core/cutting/plan_check.h"
#include "core/cutting/random_cuts.h"
#include "cutting/plan_cutting.h"
#include "support/random.h"

namespace creasewright {
namespace {

using testing::mm;

CuttingPlan planOf(std::vector<Layout> layouts) {
  CuttingPlan plan;
  plan.layouts = std::move(layouts);
  for (const Layout& layout : plan.layouts) plan.sheets += layout.count;
  plan.cost = plan.sheets;
  return plan;
}

TEST(FillOffcuts, MakesEveryBlankWhateverTheRule) {
  testing::Random random(621);
  const std::vector<CutSheet> stock{{mm(300), mm(300)}, {mm(210), mm(297)}};
  for (int round = 0; round < 40; ++round) {
    std::vector<BlankDemand> demands;
    std::vector<int> quantity;
    const int kinds = random.whole(1, 6);
    for (int k = 0; k < kinds; ++k) {
      demands.push_back({std::to_string(k), mm(random.whole(20, 200)), mm(random.whole(20, 200)),
                         random.whole(1, 30), random.whole(0, 1) == 1});
      quantity.push_back(demands.back().quantity);
    }
    for (const bool byArea : {false, true})
      for (const bool longestFirst : {false, true}) {
        const auto filled = fillOffcuts({}, stock, demands, quantity, {byArea, longestFirst});
        ASSERT_TRUE(filled);
        EXPECT_EQ(testing::planFault(planOf(*filled), stock, demands), "");
      }
  }
}

/// A strip is left on each of six sheets: six blanks go there, the seventh takes a sheet.
TEST(FillOffcuts, OffcutsComeBeforeNewSheets) {
  const std::vector<CutSheet> stock{{mm(300), mm(300)}};
  const std::vector<BlankDemand> demands{{"large", mm(300), mm(250), 6},
                                         {"small", mm(280), mm(45), 7}};
  const Result<CuttingPlan> large = planCutting(stock, {demands[0]});
  ASSERT_TRUE(large.ok());
  ASSERT_EQ(large->sheets, 6);
  const auto six = fillOffcuts(large->layouts, stock, demands, {0, 6}, {});
  ASSERT_TRUE(six);
  EXPECT_EQ(planOf(*six).sheets, 6);
  const auto seven = fillOffcuts(large->layouts, stock, demands, {0, 7}, {});
  ASSERT_TRUE(seven);
  EXPECT_EQ(planOf(*seven).sheets, 7);
  EXPECT_EQ(testing::planFault(planOf(*seven), stock, demands), "");
}

TEST(FillOffcuts, KeepsToTheSheetsAtHand) {
  std::vector<CutSheet> stock{{mm(300), mm(300)}};
  const std::vector<BlankDemand> demands{{"large", mm(200), mm(200), 3}};
  stock[0].atHand = 2;
  EXPECT_FALSE(fillOffcuts({}, stock, demands, {3}, {}));
  stock[0].atHand = 3;
  EXPECT_TRUE(fillOffcuts({}, stock, demands, {3}, {}));
}

/// 24 boxes with labels in two layers from 320 x 450 mm sheets, once planned with six sheets after
/// five seconds: the boxes alone take five, and all labels come out of what they leave.
TEST(PlanCutting, SmallBlanksComeOutOfTheOffcutsOfLargeOnes) {
  const std::vector<CutSheet> stock{{mm(320), mm(450)}};
  const std::vector<BlankDemand> demands{{"tray", mm(116), mm(97), 24},
                                         {"lid", mm(114), mm(95), 24},
                                         {"label", mm(36), mm(24), 24},
                                         {"layer", mm(37), mm(25), 24}};
  const Result<CuttingPlan> plan = planCutting(stock, demands, {.seconds = 2});
  ASSERT_TRUE(plan.ok());
  EXPECT_EQ(testing::planFault(*plan, stock, demands), "");
  EXPECT_EQ(plan->sheets, 5);
  EXPECT_TRUE(plan->proven());
}

}  // namespace
}  // namespace creasewright
