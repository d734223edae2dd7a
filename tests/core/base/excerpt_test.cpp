#include "base/excerpt.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

TEST(Excerpt, ShortTextStaysAsItIs) {
  EXPECT_EQ(excerpt(""), "");
  EXPECT_EQ(excerpt("58,7 mm \u215C\u2033"), "58,7 mm \u215C\u2033");
  EXPECT_EQ(excerpt(std::string(60, 'a')), std::string(60, 'a'));
}

TEST(Excerpt, LongTextIsCutBetweenCharacters) {
  EXPECT_EQ(excerpt(std::string(61, 'a')), std::string(60, 'a') + "...");
  EXPECT_EQ(excerpt(std::string(59, 'a') + "\u00BD"), std::string(59, 'a') + "...");
  EXPECT_EQ(excerpt(std::string(100, '\xFF')), std::string(60, '?') + "...");
}

TEST(Excerpt, ControlAndBrokenBytesAreReplaced) {
  EXPECT_EQ(excerpt(std::string_view("a\nb\0c\x7F", 6)), "a b c ");
  EXPECT_EQ(excerpt("\xC3"), "?");
  EXPECT_EQ(excerpt("\xE2\x82z"), "??z");
}

}  // namespace
}  // namespace creasewright
