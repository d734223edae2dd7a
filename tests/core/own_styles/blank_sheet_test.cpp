// From a blank sheet to a box: what the checks say on the way.

#include "styles/blank_sheet.h"

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "document/build.h"
#include "styles/registry.h"
#include "support/user_styles.h"

namespace creasewright {
namespace {

using testing::made;
using testing::trayWalls;
using testing::wall;

Design sheetWith(std::vector<Edit> edits) {
  Design design = *newDesign("blank-sheet", parseProduct("box:80x60x25mm").value(), cards().front(),
                             Ease::Easy, ToolGrid::millimetre());
  design.edits = std::move(edits);
  return design;
}

std::vector<ProblemCode> codesOf(const Design& design) {
  std::vector<ProblemCode> codes;
  for (const Problem& problem : everyProblem(*build(design))) codes.push_back(problem.code);
  return codes;
}

TEST(BlankSheet, IsFoundByItsIdAndIsNoPackagingYet) {
  ASSERT_TRUE(findStyle("blank-sheet").ok());
  EXPECT_EQ(*findStyle("blank-sheet"), &blankSheet());
  for (const Style& style : styles()) EXPECT_NE(style.id, "blank-sheet");
}

TEST(BlankSheet, EverySetInsideItsLimitsIsSound) {
  testing::Random random(61);
  for (int i = 0; i < 100; ++i) {
    const auto design = testing::randomInsideLimits(random, blankSheet());
    if (!design) continue;
    const Result<BuiltDesign> built = build(*design);
    ASSERT_TRUE(built.ok());
    EXPECT_TRUE(built->problems.empty());
  }
}

TEST(BlankSheet, TheChecksGuideUntilABoxStands) {
  EXPECT_EQ(codesOf(sheetWith({})), (std::vector{ProblemCode::SheetBare}));
  const std::vector<Edit> all = trayWalls();
  const std::vector<Edit> walls(all.begin(), all.begin() + 4);
  EXPECT_EQ(codesOf(sheetWith(walls)), std::vector(4, ProblemCode::EdgesNotHeld));
  const std::vector<Edit> half(all.begin(), all.begin() + 6);
  EXPECT_EQ(codesOf(sheetWith(half)), std::vector(2, ProblemCode::EdgesNotHeld));
  EXPECT_EQ(codesOf(sheetWith(all)), std::vector<ProblemCode>());
}

/// A lid's sides meet the walls; they are told until they are said to open.
TEST(BlankSheet, ALidMayBeSaidToOpen) {
  std::vector<Edit> edits = trayWalls();
  edits.push_back(wall("base/back.outer", "lid", "width", ";when=Last"));
  const std::vector<ProblemCode> told = codesOf(sheetWith(edits));
  EXPECT_FALSE(told.empty());
  for (const ProblemCode code : told) EXPECT_EQ(code, ProblemCode::EdgesNotHeld);
  edits.back().measures["sides"] = "Open";
  EXPECT_EQ(codesOf(sheetWith(edits)), std::vector<ProblemCode>());
}

/// Walls that lean in, or a base that is set too small, take the product's room.
TEST(BlankSheet, TheCavityIsMeasuredOnceItsWallsStand) {
  Design design = sheetWith(trayWalls());
  const Result<BuiltDesign> built = build(design);
  ASSERT_TRUE(built.ok());
  ASSERT_TRUE(built->pieces[0].cavitySize);
  EXPECT_GE(built->pieces[0].cavitySize->length, 80);
  EXPECT_LT(built->pieces[0].cavitySize->length, design.parameters.mm("length"));
  design.parameters.set("length", Length::mm(70));
  EXPECT_EQ(build(design)->problems.at(0).code, ProblemCode::CavityTooSmall);
  std::vector<Edit> leaning = trayWalls();
  leaning[0].measures["angle"] = "120";
  bool told = false;
  for (const Problem& problem : build(sheetWith(leaning))->problems)
    told = told || problem.code == ProblemCode::CavityTooSmall;
  EXPECT_TRUE(told);
}

/// Another flap that is switched off does not take the place of a named one.
TEST(BlankSheet, NamedFlapsAreFoundWhateverIsSwitchedOff) {
  std::vector<Edit> edits = trayWalls();
  edits[2].on = false;  // the left wall; its two tabs have nowhere to go
  const Result<BuiltDesign> built = build(sheetWith(edits));
  ASSERT_TRUE(built.ok());
  EXPECT_EQ(built->brokenEdits.size(), 2u);
  EXPECT_TRUE(built->pieces[0].net.find("base/right").has_value());
  EXPECT_FALSE(built->pieces[0].net.find("base/left").has_value());
  edits[2].on = true;
  edits[2].measures["name"] = "left side/#1";
  const Result<BuiltDesign> odd = build(sheetWith(edits));
  ASSERT_TRUE(odd.ok());
  EXPECT_TRUE(odd->brokenEdits.empty());
  EXPECT_TRUE(odd->pieces[0].net.find("base/left-side--1").has_value());
}

}  // namespace
}  // namespace creasewright
