// Designs that are made from a style of one's own.

#include <gtest/gtest.h>

#include "document/build.h"
#include "edits/pull.h"
#include "own_styles/keep_style.h"
#include "own_styles/prove_style.h"
#include "support/heart_box.h"

namespace creasewright {
namespace {

using testing::heartStyle;

Design madeFor(const OwnStyle& style, const char* product) {
  return *newDesign(style, parseProduct(product).value(), cards().front(), Ease::Easy,
                    ToolGrid::millimetre());
}

TEST(OwnDesign, TheBasesNeedsHoldTheProduct) {
  for (const char* product : {"box:30x20x40mm", "box:60x35x120mm", "box:90x60x160mm"}) {
    const Design design = madeFor(heartStyle(), product);
    const Result<BuiltDesign> built = build(design);
    ASSERT_TRUE(built.ok()) << product;
    EXPECT_TRUE(everyProblem(*built).empty()) << product;
    EXPECT_EQ(built->pieces[0].flat.openings[0].size(), 1u);
  }
}

/// tuck = width / 2, on the grid and inside its limits.
TEST(OwnDesign, AMeasureFollowsItsRule) {
  Design design = madeFor(heartStyle(), "box:60x40x120mm");
  EXPECT_EQ(design.parameters.length("tuck"),
            ToolGrid::millimetre().nearest(design.parameters.length("width") / 2));
  design.product = parseProduct("box:60x70x120mm").value();
  design = refitted(design);
  EXPECT_EQ(design.parameters.length("tuck"),
            ToolGrid::millimetre().nearest(design.parameters.length("width") / 2));
  const Length before = design.parameters.length("tuck");
  design = withValue(design, "width", Length::mm(90).nm());
  EXPECT_EQ(design.parameters.length("tuck"), Length::mm(45));
  EXPECT_NE(design.parameters.length("tuck"), before);
  design = withValue(design, "width", Length::mm(16).nm());
  EXPECT_GE(design.parameters.length("tuck"), Length::mm(8)) << "its least value";
  const Design inches = ontoGrid(design, ToolGrid::eighthInch());
  EXPECT_TRUE(ToolGrid::eighthInch().holds(inches.parameters.length("tuck")));
}

TEST(OwnDesign, OtherMeasuresStayAsTheyWereKept) {
  Design kept = testing::heartBox();
  kept.parameters.set("seam", Length::mm(17));
  const OwnStyle style = *keepStyle(kept, testing::heartWords());
  for (const char* product : {"box:40x30x60mm", "box:80x50x140mm"})
    EXPECT_EQ(madeFor(style, product).parameters.length("seam"), Length::mm(17)) << product;
}

TEST(OwnDesign, OnlyMeasuresThatAreSeenAreSetOrPulled) {
  const Design design = madeFor(heartStyle(), "box:60x40x120mm");
  EXPECT_TRUE(withParameter(design, "height", "130 mm").ok());
  EXPECT_EQ(withParameter(design, "seam", "9 mm").problem(),
            (Problem{ProblemCode::UnknownParameter, heartStyle().id, {std::string("seam")}}));
  const BlankDistance across{0, true, std::nullopt};
  std::vector<std::string_view> keys;
  for (const PullWay& way : waysToPull(design, across)) keys.push_back(way.key);
  EXPECT_EQ(keys, (std::vector<std::string_view>{"length"}));
  EXPECT_GT(waysToPull(freedFromStyle(design), across).size(), 1u);
}

TEST(OwnDesign, ItsChangesComeBeforeTheDesignsOwn) {
  Design design = madeFor(heartStyle(), "box:60x40x120mm");
  design.edits = {{"opening", "", "roof", "", {}, true}};
  const Result<BuiltDesign> built = build(design);
  ASSERT_TRUE(built.ok());
  EXPECT_TRUE(built->brokenStyleEdits.empty());
  ASSERT_EQ(built->brokenEdits.size(), 1u);
  EXPECT_EQ(built->brokenEdits.begin()->first, 0);
  EXPECT_EQ(
      built->problems.at(0),
      (Problem{ProblemCode::EditPlaceGone, "opening", {std::int64_t{1}, std::string("roof")}}));
}

TEST(OwnDesign, ABrokenChangeOfTheStyleIsToldAndKept) {
  OwnStyle style = heartStyle();
  style.edits[1].panel = "roof";
  const Design design = madeFor(style, "box:60x40x120mm");
  const Result<BuiltDesign> built = build(design);
  ASSERT_TRUE(built.ok());
  EXPECT_TRUE(built->brokenEdits.empty());
  ASSERT_EQ(built->brokenStyleEdits.count(1), 1u);
  EXPECT_EQ(built->problems.at(0), (Problem{ProblemCode::StylePieceBroken,
                                            "Heart box",
                                            {std::string("edit-place-gone"), std::string("holes"),
                                             std::int64_t{2}, std::string("roof")}}));
  EXPECT_EQ(built->pieces[0].flat.openings[0].size(), 1u) << "the other change is made";
  EXPECT_EQ(built->design.ownStyle, style);
}

TEST(OwnDesign, ABrokenRuleIsToldAndItsMeasureStays) {
  OwnStyle style = heartStyle();
  style.rules["tuck"] = "brim / 2";
  const Design design = madeFor(style, "box:60x40x120mm");
  EXPECT_EQ(design.parameters.length("tuck"), style.parameters.length("tuck"));
  const Result<BuiltDesign> built = build(design);
  ASSERT_TRUE(built.ok());
  ASSERT_EQ(built->problems.size(), 1u);
  EXPECT_EQ(built->problems[0].code, ProblemCode::StylePieceBroken);
  EXPECT_EQ(built->problems[0].values.at(0), ProblemValue(std::string("formula-unknown-name")));
}

TEST(OwnDesign, AProductOfAnotherSizeIsAWarning) {
  const auto warnings = [](const char* product) {
    return build(madeFor(heartStyle(), product))->warnings;
  };
  EXPECT_TRUE(warnings("box:90x60x160mm").empty());
  const Problems found = warnings("box:91x60x39mm");
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0],
            (Problem{ProblemCode::ProductOutsideStyle,
                     "length",
                     {std::string("Heart box"), Length::mm(91), Length::mm(30), Length::mm(90)},
                     Severity::Warning}));
  EXPECT_EQ(found[1].where, "height");
}

TEST(OwnDesign, AStyleIsTriedOnTheSizesItSuits) {
  const std::vector<StyleTrial> trials =
      tryStyle(heartStyle(), productsToTry(heartStyle()), cards().front(), Ease::Easy,
               ToolGrid::millimetre());
  EXPECT_EQ(trials.size(), 6u);
  for (const StyleTrial& trial : trials) EXPECT_TRUE(trial.holds()) << productText(trial.product);
  OwnStyle broken = heartStyle();
  broken.edits[0].measures["width"] = "80 mm";
  int fail = 0;
  for (const StyleTrial& trial :
       tryStyle(broken, productsToTry(broken), cards().front(), Ease::Easy, ToolGrid::millimetre()))
    if (!trial.holds()) ++fail;
  EXPECT_GE(fail, 3) << "a window of 80 mm is too wide for the small ones";
}

}  // namespace
}  // namespace creasewright
