#include "pages/text_lines.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "drawing/arrange.h"

namespace creasewright {
namespace {

/// One millimetre for each character, counted by the bytes that begin one (RFC 3629).
double counted(const std::string& line) {
  return static_cast<double>(std::ranges::count_if(
      line, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

TEST(TextLines, BreakAtSpacesAndWithinAWordThatIsTooLong) {
  EXPECT_EQ(wrapped("fold the flap", 8, counted), (std::vector<std::string>{"fold the", "flap"}));
  EXPECT_EQ(wrapped("die Geschenkschachtel", 6, counted),
            (std::vector<std::string>{"die", "Gesche", "nkscha", "chtel"}));
}

TEST(TextLines, ALetterOfSeveralBytesStaysWhole) {
  EXPECT_EQ(wrapped("\u00fc\u00f6\u00e4\u00df\u00e9", 2, counted),
            (std::vector<std::string>{"\u00fc\u00f6", "\u00e4\u00df", "\u00e9"}));
  EXPECT_EQ(wrapped("\u00fcx", 0.5, counted), (std::vector<std::string>{"\u00fc", "x"}))
      << "a letter that does not fit stands alone";
}

TEST(TextLines, ShortenedWordsFitWithTheirEllipsis) {
  const std::string words = "\u00dcberh\u00f6hte Schachtel mit Klappe";
  for (double width = 1; width < 90; width += 0.7) {
    const std::string text = shortened(words, width, 3);
    EXPECT_TRUE(text.empty() || textWidth(text, 3) <= width) << width;
    if (text.empty() || text == words) continue;
    const std::string start = text.substr(0, text.size() - std::string("\u2026").size());
    EXPECT_TRUE(words.starts_with(start));
    const auto next = static_cast<unsigned char>(words.at(start.size()));
    EXPECT_NE(next & 0xC0U, 0x80U) << "cut within a letter";
  }
  EXPECT_EQ(shortened(words, 1000, 3), words);
}

}  // namespace
}  // namespace creasewright
