#include "cutting/check_plan.h"

#include <gtest/gtest.h>

#include "cutting/plan_cutting.h"

namespace creasewright {
namespace {

/// A sound plan of two blanks from one sheet, and what it is judged by.
struct Sound {
  std::vector<CutSheet> stock{{Length::mm(210), Length::mm(297)}};
  std::vector<BlankDemand> demands{{"Lid", Length::mm(100), Length::mm(200), 2, true},
                                   {"Tag", Length::mm(40), Length::mm(60), 2, true}};
  CuttingPlan plan = planCutting(stock, demands).value();

  [[nodiscard]] std::string fault() const {
    const auto found = checkPlan(plan, stock, demands);
    return found ? std::get<std::string>(found->values.at(0)) : "";
  }
  /// The first blank of a demand in the first layout.
  CutNode& blank(int demand) { return *blankIn(plan.layouts.front().sheet, demand); }

 private:
  static CutNode* blankIn(CutNode& node, int demand) {
    if (node.kind == CutNode::Kind::Blank && node.demand == demand) return &node;
    for (CutNode& part : node.parts)
      if (CutNode* found = blankIn(part, demand)) return found;
    return nullptr;
  }
};

TEST(CheckPlan, ASoundPlanHasNoFault) { EXPECT_EQ(Sound().fault(), ""); }

TEST(CheckPlan, EachFaultIsFound) {
  {
    Sound s;
    s.demands[1].quantity = 3;
    EXPECT_EQ(s.fault(), "short");
  }
  {
    Sound s;
    s.stock[0].atHand = 0;
    EXPECT_EQ(s.fault(), "at-hand");
  }
  {
    Sound s;
    s.blank(0).width = Length::mm(99);
    EXPECT_NE(s.fault(), "");
  }
  {
    Sound s;
    s.demands[0].width = Length::mm(101);
    EXPECT_EQ(s.fault(), "size");
  }
  {
    Sound s;
    CutNode& tag = s.blank(1);
    tag.turned = !tag.turned;
    EXPECT_EQ(s.fault(), "size");
  }
  {
    Sound s;
    s.plan.layouts.front().sheet.at = Length::mm(1);
    EXPECT_EQ(s.fault(), "cut");
  }
  {
    Sound s;
    s.plan.layouts.front().sheet.width = Length::mm(300);
    EXPECT_EQ(s.fault(), "cut");
  }
  {
    Sound s;
    ++s.plan.sheets;
    EXPECT_EQ(s.fault(), "sheets");
  }
  {
    Sound s;
    ++s.plan.cost;
    EXPECT_EQ(s.fault(), "cost");
  }
  {
    Sound s;
    s.plan.bound = s.plan.cost + 1;
    EXPECT_EQ(s.fault(), "bound");
  }
}

TEST(CheckPlan, ABlankTurnedAgainstTheGrainIsFound) {
  Sound s;
  s.demands = {{"Band", Length::mm(280), Length::mm(100), 1, true}};
  s.plan = planCutting(s.stock, s.demands).value();
  EXPECT_EQ(s.fault(), "");
  s.stock[0].mayTurn = false;
  EXPECT_EQ(s.fault(), "turned");
  s.stock[0].mayTurn = true;
  s.demands[0].mayTurn = false;
  EXPECT_EQ(s.fault(), "turned");
}

}  // namespace
}  // namespace creasewright
