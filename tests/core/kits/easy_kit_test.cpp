#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/kits/plan_of.h"

namespace creasewright {
namespace {

ClassKit stripsKit(PlanGoal goal) {
  ClassKit kit;
  kit.takers = 12;
  kit.goal = goal;
  kit.stock = {{.name = "12x12", .width = Length::inches(12), .height = Length::inches(12)}};
  const Card& card = cards().front();
  kit.blanks = {{"Panel", Length::mm(120), Length::mm(72), card, 2},
                {"Card", Length::mm(101), Length::mm(165), card, 1},
                {"Strip", Length::mm(31), Length::mm(78), card, 3},
                {"Tag", Length::mm(12), Length::mm(40), card, 1}};
  return kit;
}

TEST(EasyKit, TellsWhatFewestSheetsAreBesideIt) {
  const KitPlan fewest = testing::planOf(stripsKit(PlanGoal::Fewest)).value();
  const KitPlan easy = testing::planOf(stripsKit(PlanGoal::Easy)).value();
  EXPECT_FALSE(fewest.isEasy());
  ASSERT_TRUE(easy.isEasy());
  EXPECT_EQ(easy.fewest().sheets, fewest.sheets);
  EXPECT_EQ(easy.fewest().cost, fewest.cost());
  EXPECT_EQ(easy.cards[0].plan.bound, fewest.cards[0].plan.bound);
  EXPECT_GE(easy.sheets, fewest.sheets);
  // The sentence may say "proven" only where this does.
  EXPECT_EQ(easy.proven, easy.cost() == easy.cards[0].plan.bound);
  EXPECT_LT(easy.cards[0].plan.layouts.size(), 5U);
}

/// Other trimmers, other marks: the class measures in inches, as its sheet is sold by them.
TEST(EasyKit, IsCutAtTheMarksOfTheTrimmer) {
  const ToolGrid own = testing::planOf(stripsKit(PlanGoal::Easy)).value().trimmer;
  EXPECT_EQ(own, ToolGrid::sixteenthInch());
  for (const ToolGrid grid : {own, ToolGrid::millimetre()}) {
    const KitPlan plan = testing::planOf(stripsKit(PlanGoal::Easy), {.trimmer = grid}).value();
    for (const Layout& layout : plan.cards[0].plan.layouts)
      eachNode(layout.sheet, [&](const CutNode& node) {
        if (node.kind != CutNode::Kind::Cut) return;
        EXPECT_TRUE(grid.holds(node.at, {})) << node.at.mm();
      });
  }
}

/// Where only the sheets of the best plan are at hand, that one is cut.
TEST(EasyKit, ScarceSheetsMayDoForNoOtherPlan) {
  ClassKit kit = stripsKit(PlanGoal::Easy);
  const int least = testing::planOf(stripsKit(PlanGoal::Fewest)).value().sheets;
  kit.stock[0].atHand = least;
  const KitPlan plan = testing::planOf(kit).value();
  EXPECT_EQ(plan.sheets, least);
}

TEST(EasyKit, TheGoalIsSavedAndOlderKitsKeepToFewestSheets) {
  const ClassKit kit = stripsKit(PlanGoal::Easy);
  const auto read = readKit(writeKit(kit), "new.cwkit");
  ASSERT_TRUE(read);
  EXPECT_EQ(read->goal, PlanGoal::Easy);
  auto json = nlohmann::ordered_json::parse(writeKit(kit));
  json["version"] = 4;
  json.erase("plan");
  const auto old = readKit(json.dump(), "old.cwkit");
  ASSERT_TRUE(old);
  EXPECT_EQ(old->goal, PlanGoal::Fewest);
  json["version"] = 5;
  json["plan"] = "quickest";
  const auto wrong = readKit(json.dump(), "wrong.cwkit");
  ASSERT_FALSE(wrong);
  EXPECT_EQ(wrong.problem().code, ProblemCode::FieldUnreadable);
}

}  // namespace
}  // namespace creasewright
