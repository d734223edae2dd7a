#include "making/cut_plan.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "support/trade_tray.h"

namespace creasewright {
namespace {

CutPlan cutPlanOf(const Style& style, const Parameters& parameters) {
  const Workbench bench{Length::mm(0.3), ToolGrid::sixteenthInch()};
  const Piece piece = style.build(parameters, bench)[0];
  const FlatNet flat = flatten(piece.net);
  return planCuts(piece.net, flat, findWaste(flat));
}

CutPlan tradeTrayPlan() { return cutPlanOf(**findStyle("framed-tray"), testing::tradeTray()); }

TEST(CutPlan, CutsOnOneLineAreOneStrokeAndMirrorImagesAreToldOnce) {
  const CutPlan plan = tradeTrayPlan();
  for (const Cut& cut : plan.cuts) EXPECT_EQ(cut.repeats.size(), 3U);
  EXPECT_EQ(std::ranges::count(plan.cuts, CutKind::Mitre, &Cut::kind), 1);
  EXPECT_EQ(std::ranges::count(plan.cuts, CutKind::Notch, &Cut::kind), 2);
}

TEST(CutPlan, ACutFromTheEdgeNamesTheScoreWhereItStops) {
  const CutPlan plan = tradeTrayPlan();
  // From a long side to the base line beside the short side's strips: the fourth score.
  const auto toBase = std::ranges::find_if(plan.cuts, [](const Cut& cut) {
    return cut.fromEdge && cut.edge == SheetSide::Bottom && cut.toLine == 4;
  });
  ASSERT_NE(toBase, plan.cuts.end());
  EXPECT_NEAR(distance(toBase->line.front(), toBase->line.back()), 2.75 * 25.4, 1e-6);
  EXPECT_TRUE(toBase->alongScore);
}

TEST(CutPlan, HolesComeWhileTheSheetIsWhole) {
  for (const Style& style : styles()) {
    const CutPlan plan = cutPlanOf(style, standardParameters(style));
    EXPECT_TRUE(std::ranges::is_sorted(plan.cuts, {}, &Cut::kind)) << style.id;
  }
}

TEST(CutPlan, ARepeatIsItsOwnInverse) {
  const Polyline line{{1, 2}, {3, 5}};
  for (const CutRepeat repeat : {CutRepeat::LeftRight, CutRepeat::BottomTop, CutRepeat::HalfTurn}) {
    EXPECT_NE(repeated(line, repeat, 10, 20), line);
    EXPECT_EQ(repeated(repeated(line, repeat, 10, 20), repeat, 10, 20), line);
  }
}

}  // namespace
}  // namespace creasewright
