#include "pages/guide_figure.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "folding/motion/motion_check.h"
#include "guide/make_guide.h"
#include "pages/folded_figure.h"

namespace creasewright {
namespace {

double shownProgress(const BuiltPiece& piece, const Step& step) {
  const double share = shownShare(piece, step);
  return step.figure.progressFrom + share * (step.figure.progress - step.figure.progressFrom);
}

/// No picture of a fold step shows card going through card, also where the card bends: such steps
/// are shown before stiff panels meet.
TEST(GuideFigure, NoFoldStepShowsPanelsInOneAnother) {
  testing::Random random(92);
  int bent = 0;
  for (const Style& style : styles()) {
    for (int i = 0; i < 12; ++i) {
      auto design = testing::randomInsideLimits(random, style);
      if (i == 0)
        design = *newDesign(style.id, std::nullopt, {"test", "test card", Length::mm(0.3), 0},
                            Ease::Easy, ToolGrid::none());
      if (!design) continue;
      const Result<BuiltDesign> built = build(*design);
      ASSERT_TRUE(built.ok()) << style.id;
      for (const Step& step : makeGuide(*built).steps) {
        if (step.code != StepCode::FoldStage) continue;
        const BuiltPiece& piece = built->pieces[static_cast<std::size_t>(step.piece)];
        EXPECT_FALSE(collidesAt(piece.net, piece.card.caliper.mm(), shownProgress(piece, step)))
            << style.id << ' ' << step.stage << ' ' << shownShare(piece, step);
        bent += step.bends.empty() ? 0 : 1;
      }
    }
  }
  EXPECT_GT(bent, 50);
}

/// The tabs that are fed into a rolled side are shown before they go in.
TEST(GuideFigure, TabsAreNotShownThroughTheRim) {
  Design design = *newDesign("framed-tray", std::nullopt, {"test", "test card", Length::mm(0.3), 0},
                             Ease::Easy, ToolGrid::none());
  design.parameters.setCount("long-sides-first", 1);
  const Result<BuiltDesign> built = build(design);
  ASSERT_TRUE(built.ok());
  const Guide guide = makeGuide(*built);
  const auto found = std::ranges::find(guide.steps, "raise-short-sides", &Step::stage);
  ASSERT_NE(found, guide.steps.end());
  const Step& last = *found;
  EXPECT_EQ(last.bends, std::vector{BendCode::TabsFedIn});
  EXPECT_EQ(shownShare(built->pieces[0], last), 0);
}

/// At half the way the inner walls of opposite sides lie in one plane, one through the other.
TEST(GuideFigure, DeepSidesAreShownBeforeTheyMeet) {
  Design design = *newDesign("framed-tray", std::nullopt, {"test", "test card", Length::mm(0.3), 0},
                             Ease::Easy, ToolGrid::none());
  design.parameters.set("depth", Length::inches(3));
  design.parameters.set("opening-width", Length::inches(1));
  const Result<BuiltDesign> built = build(design);
  ASSERT_TRUE(built.ok());
  int deep = 0;
  for (const Step& step : makeGuide(*built).steps) {
    if (step.bends.empty()) continue;
    ++deep;
    EXPECT_LT(shownShare(built->pieces[0], step), 0.2) << step.stage;
  }
  EXPECT_EQ(deep, 2);
}

}  // namespace
}  // namespace creasewright
