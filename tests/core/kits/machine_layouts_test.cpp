#include "kits/machine_layouts.h"

#include <gtest/gtest.h>

#include "core/cutting/nest_check.h"

namespace creasewright {
namespace {

TEST(MachineLayouts, AKitsNetsLieOnTheirMatsAsNested) {
  ClassKit kit;
  kit.takers = 5;
  for (const char* style : {"straight-tuck-box", "two-piece-box"}) {
    const auto design = newDesign(style, *parseProduct("box:60x35x50mm"), cards()[0], Ease::Easy,
                                  ToolGrid::millimetre());
    kit.items.push_back({*design, 1});
  }
  const auto whole = planMachine(buildKit(kit).value(), Length::inches(12), Length::inches(12));
  ASSERT_TRUE(whole.ok());
  ASSERT_EQ(whole->cards.size(), 1U);
  const MachineCard& plan = whole->cards.front();
  testing::expectSound(plan.parts, plan.layouts, 304.8, 304.8, 2);
  ASSERT_EQ(plan.drawings.size(), plan.layouts.size());
  double cut = 0;
  for (const PathItem& item : plan.drawings[0].paths)
    for (const Polygon& ring : item.rings)
      for (const Point& p : ring) {
        EXPECT_GE(std::min(p.x, p.y), 2 - 1e-6);
        EXPECT_LE(std::max(p.x, p.y), 302.8 + 1e-6);
        cut += 1;
      }
  EXPECT_GT(cut, 100);
  int mats = 0;
  for (const MatLayout& layout : plan.layouts) mats += layout.count;
  EXPECT_EQ(plan.mats, mats);
}

}  // namespace
}  // namespace creasewright
