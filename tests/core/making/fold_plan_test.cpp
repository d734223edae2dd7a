#include "making/fold_plan.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "styles/registry.h"

namespace creasewright {
namespace {

TEST(FoldPlan, MatesCloseInTheStageThatBringsThemTogether) {
  const Style& tray = **findStyle("framed-tray");
  const Making making{Length::mm(0.3), ToolGrid::sixteenthInch()};
  const Net net = tray.build(standardParameters(tray), making)[0].net;
  const FoldPlan plan = planFolds(net, flatten(net));
  ASSERT_EQ(plan.stages.size(), 5U);
  // The rolled strip meets the base when its wall stands; tabs and mitres with the short walls.
  EXPECT_TRUE(plan.stages[0].mates.empty());
  EXPECT_EQ(plan.stages[1].mates.size(), 2U);
  EXPECT_EQ(plan.stages[4].mates.size(), 10U);
  EXPECT_EQ(plan.burnish.size(), net.creases.size());
}

TEST(FoldPlan, EveryFoldAndMateHasItsStage) {
  const Making making{Length::mm(0.3), ToolGrid::sixteenthInch()};
  for (const Style& style : styles())
    for (const Piece& piece : style.build(standardParameters(style), making)) {
      const FoldPlan plan = planFolds(piece.net, flatten(piece.net));
      std::set<int> folded;
      std::size_t mates = 0;
      for (const FoldStage& stage : plan.stages) {
        for (const Fold& fold : stage.folds) folded.insert(fold.crease);
        mates += stage.mates.size();
      }
      EXPECT_EQ(mates, piece.net.mates.size()) << style.id;
      const auto moving = std::ranges::count_if(piece.net.creases, &Crease::moves);
      EXPECT_EQ(static_cast<std::ptrdiff_t>(folded.size()), moving) << style.id;
    }
}

}  // namespace
}  // namespace creasewright
