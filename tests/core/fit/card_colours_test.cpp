#include "fit/card_colours.h"

#include <set>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

TEST(CardColours, AreReadByNameAndByValue) {
  const Result<CardColours> two = parseCardColours("sage/#F6ECD0");
  ASSERT_TRUE(two);
  EXPECT_EQ(hexText(*two->face), "#9AAF90");
  EXPECT_EQ(two->back, (Colour{0xF6, 0xEC, 0xD0}));
  const Result<CardColours> one = parseCardColours("#0a0B0c");
  ASSERT_TRUE(one);
  EXPECT_EQ(one->face, (Colour{10, 11, 12}));
  EXPECT_FALSE(one->back);
  EXPECT_EQ(one->behind(), one->face);
  EXPECT_EQ(*parseCardColours("plain"), CardColours{});
}

TEST(CardColours, WhatIsNoneIsSaidWithWhatIsLikeIt) {
  for (const char* text :
       {"", "sagee", "sage/", "/sage", "#12345", "#12345G", "#1234567", "12345"}) {
    const Result<CardColours> read = parseCardColours(text);
    ASSERT_FALSE(read) << text;
    EXPECT_EQ(read.problem().code, ProblemCode::ColourUnknown) << text;
  }
  const Problem near = parseColour("lavendar").problem();
  ASSERT_GE(near.values.size(), 2U);
  EXPECT_EQ(std::get<std::string>(near.values[1]), "lavender");
}

TEST(CardColours, WhatIsWrittenIsReadBack) {
  for (const char* text : {"plain", "sage", "sage/cream", "#0A0B0C/plum", "plain/#010203"}) {
    const Result<CardColours> read = parseCardColours(text);
    ASSERT_TRUE(read) << text;
    EXPECT_EQ(cardColourText(*read), text);
  }
}

TEST(CardColours, NamesAndColoursStandOnce) {
  std::set<std::string_view> ids;
  std::set<std::string> values;
  for (const NamedColour& named : namedColours()) {
    EXPECT_TRUE(ids.insert(named.id).second) << named.id;
    EXPECT_TRUE(values.insert(hexText(named.colour)).second) << named.id;
    EXPECT_EQ(*parseColour(named.id), named.colour);
    EXPECT_EQ(colourFromHex(hexText(named.colour)), named.colour);
  }
}

// WCAG 2.1, relative luminance: black 0, white 1; #777777 is the grey of 4.48:1 on white that its
// failure example names.
TEST(CardColours, LuminanceIsThatOfTheStandard) {
  EXPECT_DOUBLE_EQ(luminance({0, 0, 0}), 0);
  EXPECT_NEAR(luminance({255, 255, 255}), 1, 1e-12);
  EXPECT_NEAR(1.05 / (luminance({0x77, 0x77, 0x77}) + 0.05), 4.48, 0.005);
}

TEST(CardColours, OnlySixDigitsBehindASignAreAColour) {
  for (const char* wrong :
       {"#12345", "#1234567", "1234567", "x123456", "#12345g", "#+12345", "#", ""})
    EXPECT_FALSE(colourFromHex(wrong)) << wrong;
  EXPECT_EQ(colourFromHex("#0a1B2c"), (Colour{0x0a, 0x1b, 0x2c}));
}

}  // namespace
}  // namespace creasewright
