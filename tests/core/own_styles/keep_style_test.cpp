#include "own_styles/keep_style.h"

#include <gtest/gtest.h>

#include "document/build.h"
#include "document/own_style_file.h"
#include "styles/registry.h"
#include "support/heart_box.h"

namespace creasewright {
namespace {

using testing::heartBox;
using testing::heartStyle;
using testing::heartWords;

TEST(KeepStyle, HoldsWhatTheDesignHas) {
  const OwnStyle style = heartStyle();
  EXPECT_TRUE(isOwnStyleId(style.id)) << style.id;
  EXPECT_TRUE(style.id.starts_with("heart-box-")) << style.id;
  EXPECT_EQ(style.change, 1);
  EXPECT_EQ(style.base, "straight-tuck-box");
  EXPECT_EQ(style.seen, (std::vector<std::string>{"length", "height"}));
  ASSERT_EQ(style.edits.size(), 2u);
  EXPECT_EQ(style.edits[0], heartBox().edits[0]);
}

TEST(KeepStyle, AnIdHasTheTitlesLettersInLowerCase) {
  OwnStyle style = heartStyle();
  style.title = "AZ, Zebra & 90 azZ";
  EXPECT_TRUE(ownStyleIdFor(style).starts_with("az-zebra-90-azz-")) << ownStyleIdFor(style);
}

TEST(KeepStyle, AnotherStyleHasAnotherId) {
  StyleWords words = heartWords();
  words.summary = "Other";
  EXPECT_NE(keepStyle(heartBox(), words)->id, heartStyle().id);
  words.title = "\u2665";
  EXPECT_TRUE(keepStyle(heartBox(), words)->id.starts_with("style-"));
}

/// "6" was typed on a millimetre grid; it stays 6 mm for someone who works in inches.
TEST(KeepStyle, BareNumbersKeepTheirUnit) {
  Design design = heartBox();
  design.edits[1].measures["across"] = "2 * 3";
  design.edits[0].measures["width"] = "24";
  const OwnStyle style = *keepStyle(design, heartWords());
  EXPECT_EQ(style.edits[0].measures.at("width"), "24 mm");
  EXPECT_EQ(style.edits[1].measures.at("across"), "(2 * 3) * 1 mm");
  EXPECT_EQ(style.edits[1].measures.at("count"), "1");
  EXPECT_EQ(style.edits[0].measures.at("height"), "this-width");
  const auto holes = [](const Design& made) {
    const Result<BuiltDesign> built = build(made);
    EXPECT_TRUE(built.ok() && built->problems.empty());
    std::vector<double> areas;
    if (built.ok())
      for (const auto& openings : built->pieces[0].flat.openings)
        for (const Polygon& opening : openings) areas.push_back(std::abs(signedArea(opening)));
    return areas;
  };
  const auto in = [&](ToolGrid grid) {
    return *newDesign(style, parseProduct("box:60x35x120mm").value(), cards().front(), Ease::Easy,
                      grid);
  };
  ASSERT_EQ(holes(design).size(), 2u);
  EXPECT_NEAR(holes(in(ToolGrid::sixteenthInch()))[0], holes(design)[0], 1e-6);
  EXPECT_NEAR(holes(in(ToolGrid::sixteenthInch()))[1], holes(design)[1], 1e-6);
}

TEST(KeepStyle, KeptAgainItHasItsIdAndANewNumber) {
  const OwnStyle first = heartStyle();
  Design made = *newDesign(first, std::nullopt, cards().front(), Ease::Easy, ToolGrid::none());
  made.edits = {{"corners", "", "front/left/top-dust-flap", "side", {{"size", "3 mm"}}, true}};
  const OwnStyle second = *keepStyle(made, wordsOf(first), &first);
  EXPECT_EQ(second.id, first.id);
  EXPECT_EQ(second.change, 2);
  ASSERT_EQ(second.edits.size(), 3u);
  EXPECT_EQ(second.edits[2].kind, "corners");
  EXPECT_EQ(made.ownStyle->change, 1) << "a design keeps the style it was made from";
}

TEST(KeepStyle, WhatCannotBeKeptIsSaid) {
  StyleWords words = heartWords();
  words.seen = {"brim"};
  EXPECT_EQ(keepStyle(heartBox(), words).problem().code, ProblemCode::UnknownParameter);
  words = heartWords();
  for (const auto& [rule, code] : {std::pair{"brim / 2", ProblemCode::FormulaUnknownName},
                                   {"width / 0", ProblemCode::FormulaZeroDivision},
                                   {"tuck / 2", ProblemCode::FormulaCircle},
                                   {"width / height", ProblemCode::FormulaUnits},
                                   {"width +", ProblemCode::FormulaUnreadable}}) {
    words.rules = {{"tuck", rule}};
    const Result<OwnStyle> kept = keepStyle(heartBox(), words);
    ASSERT_FALSE(kept.ok()) << rule;
    EXPECT_EQ(kept.problem().code, code) << rule;
    EXPECT_EQ(kept.problem().where, "tuck") << rule;
  }
  words = heartWords();
  words.title = std::string(201, 'x');
  EXPECT_EQ(keepStyle(heartBox(), words).problem().code, ProblemCode::TextTooLong);
}

TEST(KeepStyle, FreedADesignBuildsTheSameNet) {
  const Design made = *newDesign(heartStyle(), parseProduct("box:50x30x90mm").value(),
                                 cards().front(), Ease::Easy, ToolGrid::millimetre());
  const Design freed = freedFromStyle(made);
  EXPECT_FALSE(freed.ownStyle);
  EXPECT_EQ(freed.edits, made.ownStyle->edits);
  EXPECT_EQ(seenMeasures(freed).size(), (*findStyle("straight-tuck-box"))->parameters.size());
  const Result<BuiltDesign> one = build(made);
  const Result<BuiltDesign> other = build(freed);
  ASSERT_TRUE(one.ok() && other.ok());
  EXPECT_EQ(one->pieces[0].flat.panels, other->pieces[0].flat.panels);
  EXPECT_EQ(one->pieces[0].flat.openings, other->pieces[0].flat.openings);
}

}  // namespace
}  // namespace creasewright
