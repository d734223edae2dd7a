#include "guide/joined_folds.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "document/build.h"
#include "guide/make_guide.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

const FoldStage& stageOf(const FoldPlan& plan, const std::string& code) {
  return *std::ranges::find(plan.stages, code, &FoldStage::code);
}

/// Nothing is held or bent in a stage that is told before another in one step; the step holds the
/// folds of all its stages in their order.
void expectReady(const BuiltDesign& built, const Step& step) {
  const BuiltPiece& piece = built.pieces[static_cast<std::size_t>(step.piece)];
  const FoldPlan plan = planFolds(piece.net, piece.flat);
  std::size_t folds = 0;
  for (const ToldStage& told : step.stages) {
    const FoldStage& stage = stageOf(plan, told.code);
    ASSERT_EQ(told.folds.size(), stage.folds.size()) << told.code;
    for (const Fold& fold : stage.folds) {
      ASSERT_LT(folds, step.folds.size());
      EXPECT_EQ(step.folds[folds++].crease, fold.crease) << told.code;
    }
    if (&told == &step.stages.back()) continue;
    EXPECT_TRUE(stage.bends.empty()) << told.code;
    for (const int mate : stage.mates)
      EXPECT_EQ(piece.net.mates[static_cast<std::size_t>(mate)].method, Method::Rest) << told.code;
  }
  EXPECT_EQ(folds, step.folds.size());
  EXPECT_EQ(step.stage, step.stages.back().code);
  EXPECT_EQ(step.figure.progressFrom, step.stages.front().from);
  EXPECT_EQ(step.figure.progress, step.stages.back().to);
}

/// The product goes in before or after all stages of a step, never between two of them.
void expectNothingBetween(const Guide& guide) {
  for (const Step& put : guide.steps) {
    if (put.code != StepCode::PutIn) continue;
    for (const Step& step : guide.steps) {
      if (step.code != StepCode::FoldStage || step.piece != put.piece) continue;
      const double at = put.figure.progress;
      EXPECT_TRUE(at < step.figure.progressFrom + 1e-9 || at > step.figure.progress - 1e-9)
          << step.stage;
    }
  }
}

TEST(JoinedFolds, StagesThatGetReadyAreToldWithTheOneThatCloses) {
  int joined = 0;
  for (const Style& style : styles())
    for (const Design& design : {testing::asItComes(style), testing::withItsExtras(style)}) {
      SCOPED_TRACE(std::string(style.id));
      const auto built = build(design);
      ASSERT_TRUE(built);
      const Guide guide = makeGuide(*built);
      expectNothingBetween(guide);
      for (const Step& step : guide.steps) {
        if (step.code != StepCode::FoldStage) continue;
        expectReady(*built, step);
        joined += step.stages.size() > 1 ? 1 : 0;
      }
    }
  EXPECT_GT(joined, 40);
}

/// By hand: dust flaps, tuck flap and lid of either end are one step each; the walls with the back.
TEST(JoinedFolds, ATuckBoxIsFoldedInThreeSteps) {
  const auto built = build(testing::asItComes(**findStyle("straight-tuck-box")));
  ASSERT_TRUE(built);
  std::vector<std::vector<std::string>> told;
  for (const Step& step : makeGuide(*built).steps) {
    if (step.code != StepCode::FoldStage) continue;
    told.emplace_back();
    for (const ToldStage& stage : step.stages) told.back().push_back(stage.code);
  }
  ASSERT_EQ(told.size(), 3U);
  EXPECT_EQ(told[0], (std::vector<std::string>{"back-and-seam", "walls"}));
  EXPECT_EQ(told[1], (std::vector<std::string>{"bottom-dust-flaps", "bottom-tuck", "bottom-lid"}));
  EXPECT_EQ(told[2], (std::vector<std::string>{"top-dust-flaps", "top-tuck", "top-lid"}));
}

}  // namespace
}  // namespace creasewright
