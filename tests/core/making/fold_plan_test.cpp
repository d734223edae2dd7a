#include "making/fold_plan.h"

#include <algorithm>
#include <map>
#include <set>

#include <gtest/gtest.h>

#include "styles/registry.h"

namespace creasewright {
namespace {

TEST(FoldPlan, MatesCloseInTheStageThatBringsThemTogether) {
  const Style& tray = **findStyle("framed-tray");
  const Workbench bench{Length::mm(0.3), ToolGrid::sixteenthInch()};
  const Net net = tray.build(standardParameters(tray), bench)[0].net;
  const FoldPlan plan = planFolds(net, flatten(net));
  // The tabs meet the long walls as these are raised, the strips the base as their sides are
  // rolled, the mitres the long sides' frames with the short ones.
  std::map<std::string, std::size_t> mates;
  for (const FoldStage& stage : plan.stages)
    if (!stage.mates.empty()) mates[stage.code] = stage.mates.size();
  EXPECT_EQ(mates, (std::map<std::string, std::size_t>{{"long-sides-to-tabs", 4},
                                                       {"long-sides-over-tabs", 2},
                                                       {"short-sides-over-long", 6}}));
  EXPECT_EQ(plan.burnish.size(), net.creases.size());
}

TEST(FoldPlan, EveryFoldAndMateHasItsStage) {
  const Workbench bench{Length::mm(0.3), ToolGrid::sixteenthInch()};
  for (const Style& style : styles())
    for (const Piece& piece : style.build(standardParameters(style), bench)) {
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
