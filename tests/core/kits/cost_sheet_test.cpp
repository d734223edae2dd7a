#include "kits/cost_sheet.h"

#include <cmath>
#include <numeric>

#include <gtest/gtest.h>

#include "core/kits/plan_of.h"
#include "stock/stock_list.h"
#include "support/random.h"

namespace creasewright {
namespace {

Design designOf(const char* style, const char* product) {
  return *newDesign(style, *parseProduct(product), cards()[0], Ease::Easy,
                    ToolGrid::sixteenthInch());
}

/// Two designs and a plain blank for eight people; tape of every width any of them takes.
ClassKit pricedKit() {
  ClassKit kit;
  kit.takers = 8;
  kit.items = {{designOf("framed-tray", "box:80x60x20mm"), 1},
               {designOf("straight-tuck-box", "box:60x35x90mm"), 2}};
  kit.blanks = {{"Panel", Length::inches(4), Length::inches(6), cards()[0], 1}};
  kit.stock = {{"12 x 12 in", Length::inches(12), Length::inches(12), 50}};
  const KitPlan bare = testing::planOf(kit).value();
  for (const TapeNeed& tape : bare.built->tapes)
    kit.supplies.push_back(
        {"", "Tape", SupplyItemKind::Tape, tape.width, Length::mm(25000), 0, 400, 0});
  kit.pricing = Pricing{"EUR", 1800, 10, 30, 5, 12000};
  return kit;
}

TEST(CostSheet, TheCardOfAllBagsIsThePriceOfAllSheets) {
  ClassKit kit = pricedKit();
  kit.supplies.clear();
  kit.pricing = Pricing{"EUR", 0, 0, 0, 0, 0};
  const KitPlan plan = testing::planOf(kit).value();
  const CostSheet costs = costSheetOf(plan).value();
  EXPECT_FALSE(costs.complete) << "the tape has no price";
  const double sheets = 50.0 * plan.sheets;
  // Each of the boxes is rounded to a coin.
  EXPECT_NEAR(static_cast<double>(costs.seat.material) * kit.takers, sheets, 3.0 * kit.takers);
  EXPECT_EQ(costs.boxes.size(), 2U);
}

TEST(CostSheet, LinesAddUpAndTheMarginIsAShareOfThePrice) {
  const KitPlan plan = testing::planOf(pricedKit()).value();
  const CostSheet costs = costSheetOf(plan).value();
  EXPECT_TRUE(costs.complete);
  for (const BoxPrice& box : costs.boxes) {
    EXPECT_GT(box.card, 0);
    EXPECT_GT(box.sticky, 0);
    // 18.00 an hour.
    EXPECT_NEAR(static_cast<double>(box.work), 30.0 * box.minutes, 0.51);
    const std::int64_t direct = box.card + box.sticky + box.ribbon + box.work;
    EXPECT_NEAR(static_cast<double>(box.overhead), 0.1 * static_cast<double>(direct), 0.51);
    EXPECT_EQ(box.cost, direct + box.overhead);
    // A fee of 5 % goes off first; of what is left 30 % is margin.
    const double left = 0.95 * static_cast<double>(box.price);
    EXPECT_NEAR(0.7 * left, static_cast<double>(box.cost), 1);
    EXPECT_GE(0.7 * left, static_cast<double>(box.cost) - 1e-6) << "rounded up";
  }
}

// By trying every number of heads.
TEST(CostSheet, FromTheTellsNumberOnNothingIsLost) {
  testing::Random random(1603);
  for (int round = 0; round < 6; ++round) {
    ClassKit kit = pricedKit();
    kit.pricing->classCosts = random.whole(1000, 40000);
    kit.pricing->fee = random.whole(0, 20);
    kit.pricing->margin = random.whole(5, 60);
    const CostSheet costs = costSheetOf(testing::planOf(kit).value()).value();
    ASSERT_TRUE(costs.seat.breakEven);
    int heads = 0;
    const auto lost = [&](int people) {
      const double income =
          people * static_cast<double>(costs.seat.price) * (1 - kit.pricing->fee / 100.0);
      return income + 1e-6 <
             static_cast<double>(kit.pricing->classCosts + people * costs.seat.material);
    };
    while (lost(heads)) ++heads;
    EXPECT_EQ(*costs.seat.breakEven, heads);
    EXPECT_LE(heads, kit.takers) << "the planned number pays for all";
  }
}

TEST(CostSheet, ReadsBackWithTheKitAndIsNothingWithoutPrices) {
  ClassKit kit = pricedKit();
  const Result<ClassKit> back = readKit(writeKit(kit), "class.cwkit");
  ASSERT_TRUE(back);
  EXPECT_EQ(*back, kit);
  kit.pricing.reset();
  EXPECT_FALSE(costSheetOf(testing::planOf(kit).value()));
  ClassKit dear = pricedKit();
  dear.pricing->margin = kMostMargin + 1;
  const auto problem = fileLimitProblem(dear);
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->where, "pricing/margin");
}

TEST(CostSheet, PricesAreReadWithPointOrComma) {
  EXPECT_EQ(readPrice("12"), 1200);
  EXPECT_EQ(readPrice("12.5"), 1250);
  EXPECT_EQ(readPrice("12,50"), 1250);
  for (const char* wrong : {"", "twelve", "1.2.3", "-1", "1e3", "12 EUR", "99999999999"})
    EXPECT_FALSE(readPrice(wrong)) << wrong;
}

}  // namespace
}  // namespace creasewright
