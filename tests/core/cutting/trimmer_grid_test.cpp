#include "cutting/trimmer_grid.h"

#include <gtest/gtest.h>

#include "cutting/plan_cutting.h"
#include "cutting/trim_steps.h"
#include "support/random.h"

namespace creasewright {
namespace {

/// Every part lies in its rectangle, two parts of a cut fill it, and no blank is smaller than
/// asked.
void expectSound(const CutNode& node, const std::vector<BlankDemand>& demands) {
  EXPECT_GT(node.width, Length());
  EXPECT_GT(node.height, Length());
  if (node.kind == CutNode::Kind::Blank) {
    const BlankDemand& demand = demands[static_cast<std::size_t>(node.demand)];
    // Each of a few blanks one above the other grows by less than a mark.
    const Length most = Length::inches(1, 16) * 4;
    const Length width = node.turned ? node.height : node.width;
    const Length height = node.turned ? node.width : node.height;
    EXPECT_GE(width, demand.width);
    EXPECT_GE(height, demand.height);
    EXPECT_LT(width, demand.width + most);
    EXPECT_LT(height, demand.height + most);
  }
  if (node.kind != CutNode::Kind::Cut) return;
  ASSERT_EQ(node.parts.size(), 2U);
  const CutNode& a = node.parts[0];
  const CutNode& b = node.parts[1];
  EXPECT_EQ(a.x, node.x);
  EXPECT_EQ(a.y, node.y);
  if (node.upright) {
    EXPECT_EQ(a.width, node.at);
    EXPECT_EQ(a.width + b.width, node.width);
    EXPECT_EQ(b.x, node.x + node.at);
    EXPECT_EQ(a.height, node.height);
    EXPECT_EQ(b.height, node.height);
  } else {
    EXPECT_EQ(a.height, node.at);
    EXPECT_EQ(a.height + b.height, node.height);
    EXPECT_EQ(b.y, node.y + node.at);
    EXPECT_EQ(a.width, node.width);
    EXPECT_EQ(b.width, node.width);
  }
  expectSound(a, demands);
  expectSound(b, demands);
}

// 97 x 33 mm on an inch trimmer were set as 3 13/16 and 1 5/16 in: 96.84 mm.
TEST(TrimmerGrid, AMillimetreBlankIsRoundedUpWhereThereIsRoom) {
  const std::vector<CutSheet> stock{{Length::inches(12), Length::inches(12)}};
  const std::vector<BlankDemand> demands{{"A", Length::mm(97), Length::mm(33), 20}};
  const CuttingPlan plan = planCutting(stock, demands).value();
  const ToolGrid grid = ToolGrid::sixteenthInch();
  for (const Layout& layout : plan.layouts) {
    Layout shown = layout;
    shown.sheet = ontoTrimmerGrid(layout.sheet, grid);
    expectSound(shown.sheet, demands);
    for (const TrimStep& step : trimSteps(shown)) EXPECT_TRUE(grid.holds(step.setting, {}));
  }
}

TEST(TrimmerGrid, KeepsEveryBlankOfRandomPlansAndNoneTooSmall) {
  testing::Random random(611);
  const ToolGrid grid = ToolGrid::sixteenthInch();
  int onGrid = 0;
  int settings = 0;
  for (int round = 0; round < 60; ++round) {
    const std::vector<CutSheet> stock{
        {Length::mm(random.whole(200, 330)), Length::mm(random.whole(280, 480))}};
    std::vector<BlankDemand> demands;
    for (int d = random.whole(1, 4); d > 0; --d)
      demands.push_back({"B", Length::mm(random.whole(20, 150)), Length::mm(random.whole(20, 150)),
                         random.whole(1, 12)});
    const auto plan = planCutting(stock, demands, {.seconds = 0.05});
    if (!plan) continue;
    for (const Layout& layout : plan->layouts) {
      Layout shown = layout;
      shown.sheet = ontoTrimmerGrid(layout.sheet, grid);
      expectSound(shown.sheet, demands);
      EXPECT_EQ(shown.sheet.width, layout.sheet.width);
      EXPECT_EQ(shown.sheet.height, layout.sheet.height);
      EXPECT_EQ(blanksOf(shown, demands.size()), blanksOf(layout, demands.size()));
      for (const TrimStep& step : trimSteps(shown)) {
        ++settings;
        onGrid += grid.holds(step.setting, {}) ? 1 : 0;
      }
    }
  }
  std::cout << onGrid << " of " << settings << " settings on the marks\n";
  EXPECT_GT(onGrid, settings / 2);
}

}  // namespace
}  // namespace creasewright
