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

TEST(Excerpt, StaysOnOneLine) {
  EXPECT_EQ(excerpt("a\u2028b\u2029c\u0085d"), "a b c d");
  EXPECT_EQ(excerpt(std::string(200'000, '\n')), std::string(60, ' ') + "...");
}

TEST(Excerpt, OfAPathKeepsTheFilesName) {
  EXPECT_EQ(pathExcerpt("/home/a\nb/tray.cwdesign"), "/home/a b/tray.cwdesign");
  const std::string shown = pathExcerpt(std::string(4000, '/') + "tray.cwdesign");
  EXPECT_LT(shown.size(), 260U);
  EXPECT_TRUE(shown.ends_with("tray.cwdesign"));
}

TEST(Excerpt, CountsCharactersNotBytes) {
  EXPECT_EQ(characterCount(""), 0U);
  EXPECT_EQ(characterCount("a\u00BD\u215C\U0001F381"), 4U);
  EXPECT_EQ(characterCount("\xFF\xC3"), 2U);
}

}  // namespace
}  // namespace creasewright
