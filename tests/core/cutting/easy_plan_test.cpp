#include "cutting/easy_plan.h"

#include <gtest/gtest.h>

#include "core/cutting/plan_check.h"
#include "core/cutting/random_cuts.h"
#include "cutting/check_plan.h"
#include "cutting/fewer_settings.h"
#include "cutting/plan_cutting.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

using testing::mm;

/// What is not easy about a plan: a setting off the marks or, at the trimmer, a strip that is too
/// narrow; only small blanks are cut with a knife.
std::string hardness(const CuttingPlan& plan, const std::vector<BlankDemand>& cut, ToolGrid grid) {
  for (const Layout& layout : plan.layouts)
    for (const TrimStep& step : trimSteps(layout)) {
      if (!grid.holds(step.setting, {})) return "a setting off the marks";
      if (!step.knife && step.setting < mm(20)) return "a narrow strip at the trimmer";
      const int demand = step.demand >= 0 ? step.demand : step.restDemand;
      if (step.knife && demand >= 0 &&
          std::min(cut[static_cast<std::size_t>(demand)].width,
                   cut[static_cast<std::size_t>(demand)].height) >= mm(20))
        return "a large blank cut with a knife";
    }
  return {};
}

struct Sums {
  int plans = 0;
  int layouts = 0;
  int settings = 0;
  int sheets = 0;
  void add(const CuttingPlan& plan) {
    ++plans;
    sheets += plan.sheets;
    layouts += static_cast<int>(plan.layouts.size());
    for (const Layout& layout : plan.layouts) settings += trimEffort(layout.sheet).settings;
  }
};

std::ostream& operator<<(std::ostream& out, const Sums& sums) {
  return out << sums.plans << " plans, " << sums.sheets << " sheets, " << sums.layouts
             << " layouts, " << sums.settings << " settings";
}

/// Random classes of an inch or a millimetre trimmer: every plan is whole and easy, rounds up by
/// less than a mark, and its cost and trouble are no more than those of the plan of fewest sheets
/// where that is easy too.
TEST(EasyPlan, RandomClassesAreCutEasily) {
  testing::Random random(71);
  Sums easy;
  Sums fewest;
  for (int round = 0; round < 10; ++round) {
    const bool inches = random.whole(0, 1) == 1;
    const ToolGrid grid = inches ? ToolGrid::sixteenthInch() : ToolGrid::millimetre();
    const int takers = random.whole(6, 24);
    std::vector<CutSheet> stock{{mm(304.8), mm(304.8)}};
    if (random.whole(0, 2) == 0) stock.push_back({mm(210), mm(297), 0, random.whole(1, 8)});
    for (CutSheet& sheet : stock) sheet.mayTurn = random.whole(0, 3) > 0;
    std::vector<BlankDemand> demands;
    for (int d = random.whole(1, 6); d > 0; --d)
      demands.push_back({"b" + std::to_string(d), Length::mm(random.between(25, 190)),
                         Length::mm(random.between(25, 190)), takers * random.whole(1, 2)});
    if (random.whole(0, 2) == 0)
      demands.push_back({"small", mm(random.whole(8, 19)), mm(random.whole(8, 90)), takers});
    const auto plan = planCutting(stock, demands, {.seconds = 0.1});
    if (!plan) continue;
    Work work(0.3 * Work::kSecond);
    const auto found = easyPlan(stock, demands, *plan, {grid}, work);
    ASSERT_TRUE(found) << round;
    const std::vector<BlankDemand> cut = roundedUp(stock, demands, grid);
    EXPECT_EQ(testing::planFault(*found, stock, cut), "") << round;
    EXPECT_EQ(hardness(*found, cut, grid), "") << round;
    EXPECT_GE(found->cost, plan->bound);
    EXPECT_EQ(found->bound, plan->bound);
    for (std::size_t d = 0; d < demands.size(); ++d) {
      EXPECT_GE(cut[d].width, demands[d].width);
      EXPECT_LT(cut[d].width, demands[d].width + grid.step());
      EXPECT_GE(cut[d].height, demands[d].height);
      EXPECT_LT(cut[d].height, demands[d].height + grid.step());
    }
    easy.add(*found);
    fewest.add(*plan);
  }
  std::cout << "easy " << easy << "\nfewest " << fewest << "\n";
  EXPECT_GT(easy.plans, 6);
  EXPECT_LT(easy.layouts + easy.settings / 5, fewest.layouts + fewest.settings / 5);
}

}  // namespace
}  // namespace creasewright
