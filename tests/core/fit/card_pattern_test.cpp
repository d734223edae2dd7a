#include "fit/card_pattern.h"

#include <gtest/gtest.h>

#include "patterns/pattern.h"

namespace creasewright {
namespace {

TEST(CardPattern, IsReadWithAllItsSettings) {
  const Result<CardColours> card = withPattern(
      *parseCardColours("plum/cream"), "dots:scale=12mm:turn=45:colours=sage,cream:side=back");
  ASSERT_TRUE(card);
  EXPECT_EQ(card->face, *parseColour("plum"));
  ASSERT_TRUE(card->pattern);
  EXPECT_EQ(card->pattern->id, "dots");
  EXPECT_EQ(card->pattern->scale, mm(12));
  EXPECT_EQ(card->pattern->turn, 45);
  EXPECT_EQ(card->pattern->colours, (std::vector{*parseColour("sage"), *parseColour("cream")}));
  EXPECT_EQ(card->patternOf(false), nullptr);
  EXPECT_EQ(card->patternOf(true), &*card->pattern);
}

TEST(CardPattern, WhatIsNotSaidIsAsUsual) {
  for (const PatternKind& pattern : patterns()) {
    const Result<CardColours> card = withPattern({}, pattern.id);
    ASSERT_TRUE(card) << pattern.id;
    EXPECT_EQ(*card->pattern, usualPaper(pattern));
    EXPECT_FALSE(card->patternBehind);
  }
  EXPECT_FALSE(withPattern(*withPattern({}, "dots:side=back"), "none")->pattern);
  EXPECT_FALSE(withPattern(*withPattern({}, "dots:side=back"), "snow")->patternBehind);
  EXPECT_EQ(withPattern({}, "dots:colours=sage/cream")->pattern->colours.size(), 2U);
}

TEST(CardPattern, WhatCannotBeReadIsSaid) {
  const auto code = [](std::string_view text) {
    const Result<CardColours> card = withPattern({}, text);
    EXPECT_FALSE(card) << text;
    return card ? ProblemCode::NotADesign : card.problem().code;
  };
  for (const char* text : {"", "dotz", ":scale=3mm", "DOTS "})
    EXPECT_EQ(code(text), ProblemCode::PatternUnknown) << text;
  for (const char* text : {"dots:", "dots:scale", "dots:size=3mm", "dots:turn=360", "dots:turn=-1",
                           "dots:turn=4.5", "dots:turn=", "dots:side=left"})
    EXPECT_EQ(code(text), ProblemCode::PatternUnreadable) << text;
  for (const char* text : {"dots:scale=0", "dots:scale=10km", "dots:scale=", "dots:scale=2mm"})
    EXPECT_EQ(code(text), ProblemCode::PatternScaleOff) << text;
  EXPECT_EQ(code("dots:colours=sagee"), ProblemCode::ColourUnknown);
  EXPECT_EQ(code("dots:colours="), ProblemCode::ColourUnknown);
  EXPECT_EQ(code("gingham:colours=sage,cream,plum"), ProblemCode::PatternColours);
}

}  // namespace
}  // namespace creasewright
