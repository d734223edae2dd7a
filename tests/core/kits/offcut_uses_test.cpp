#include "kits/offcut_uses.h"

#include <gtest/gtest.h>

#include "core/cutting/plan_check.h"
#include "core/kits/plan_of.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

ClassKit boxesFrom(Length width, Length height) {
  ClassKit kit;
  kit.takers = 4;
  kit.items.push_back({*newDesign("two-piece-box", *parseProduct("box:60x40x25mm"), cards()[0],
                                  Ease::Easy, ToolGrid::millimetre()),
                       1});
  kit.stock = {{"sheet", width, height}};
  return kit;
}

/// What is offered can be had: with it in the kit, no further sheet is needed.
TEST(OffcutUses, WhatIsOfferedTakesNoFurtherSheet) {
  const ClassKit kit = boxesFrom(Length::mm(320), Length::mm(450));
  const KitPlan plan = testing::planOf(kit).value();
  const std::vector<OffcutUse> uses = offcutUses(plan);
  ASSERT_FALSE(uses.empty());
  for (const OffcutUse& use : uses) {
    ClassKit more = kit;
    more.items[static_cast<std::size_t>(use.item)].design.extras.push_back(use.extra);
    const KitPlan with = testing::planOf(more, {.seconds = 0.5}).value();
    EXPECT_EQ(with.sheets, plan.sheets) << use.extra.kind;
    ASSERT_EQ(with.cards.size(), 1U);
    EXPECT_EQ(
        testing::planFault(with.cards[0].plan, testing::cutStock(more), with.cards[0].demands()),
        "");
    EXPECT_GT(use.blanks, 0);
  }
}

/// A sheet that the blanks fill leaves nothing to offer.
TEST(OffcutUses, ScrapIsNotOffered) {
  ClassKit kit = boxesFrom(Length::mm(320), Length::mm(450));
  const KitPlan plan = testing::planOf(kit).value();
  const BlankDemand& tray = plan.cards[0].demands()[0];
  kit.items[0].piece = plan.cards[0].sources()[0].piece;
  kit.stock = {{"sheet", tray.width + Length::mm(10), tray.height + Length::mm(10)}};
  const KitPlan tight = testing::planOf(kit).value();
  EXPECT_EQ(tight.sheets, 4);
  for (const Layout& layout : tight.cards[0].plan.layouts)
    EXPECT_TRUE(offcutsOf(layout, kLeastOffcut).empty());
  EXPECT_TRUE(offcutUses(tight).empty());
}

/// A design that has mats already is not offered any.
TEST(OffcutUses, NothingIsOfferedTwice) {
  ClassKit kit = boxesFrom(Length::mm(320), Length::mm(450));
  for (const OffcutUse& use : offcutUses(testing::planOf(kit).value()))
    kit.items[0].design.extras.push_back(use.extra);
  ASSERT_FALSE(kit.items[0].design.extras.empty());
  for (const OffcutUse& use : offcutUses(testing::planOf(kit, {.seconds = 0.5}).value()))
    for (const Extra& extra : kit.items[0].design.extras) EXPECT_NE(use.extra.kind, extra.kind);
}

}  // namespace
}  // namespace creasewright
