#include "document/print_warnings.h"

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "document/words_room.h"
#include "drawing/contrast.h"
#include "drawing/words_on.h"
#include "extras/flat_piece.h"
#include "lettering/type_width.h"
#include "patterns/pattern.h"
#include "support/random.h"

namespace creasewright {
namespace {

using testing::Random;

BuiltPiece label(std::vector<std::string> lines, double width, double height,
                 const CardColours& colours = {}, bool round = false) {
  Polygon outline{{0, 0}, {width, 0}, {width, height}, {0, height}};
  if (round) outline = ellipse({width / 2, height / 2}, width / 2, height / 2);
  Card card = cards().front();
  card.colours = colours;
  Problems problems;
  return buildPiece(flatPiece("label", {outline, {}}, lines), card, {}, problems);
}

bool isTold(const Problems& problems, ProblemCode code) {
  return std::ranges::any_of(problems, [code](const Problem& each) {
    return each.code == code && each.severity == Severity::Warning;
  });
}

/// 6.5 pt is 2.29 mm: an x-height of 1.2 mm at 0.52 of the type size (Regulation (EU) 1169/2011,
/// Art. 13(2), asks for 1.2 mm).
TEST(PrintWarnings, WordsUnderSixPointsAndAHalf) {
  EXPECT_NEAR(kSmallestPoints * kPoint * 0.52, 1.2, 0.01);
  EXPECT_TRUE(
      isTold(printWarnings(label({"Plum jam", "made by us", "of ripe plums", "in autumn"}, 20, 10)),
             ProblemCode::TextSmall));
  EXPECT_TRUE(printWarnings(label({"Plum jam"}, 50, 25)).empty());
}

// WCAG 2.1 contrasts: #767676 on white 4.54, #777777 4.48 (published examples of its formula).
TEST(PrintWarnings, WordsThatDoNotStandOutFromAnyColourUnderThem) {
  Random random(4);
  for (int i = 0; i < 300; ++i) {
    const auto some = [&] {
      const auto part = [&] { return static_cast<std::uint8_t>(random.whole(0, 255)); };
      return Colour{part(), part(), part()};
    };
    CardColours colours;
    colours.face = some();
    std::vector<Colour> under{*colours.face};
    if (random.whole(0, 1) == 1) {
      colours.pattern = usualPaper(patterns()[static_cast<std::size_t>(random.whole(0, 15))]);
      under = coloursOf(*colours.pattern);
      for (Colour& colour : under) colour = some();
      colours.pattern->colours = under;
    }
    const auto least = [&](Colour words) {
      double all = 21;
      for (const Colour& colour : under) all = std::min(all, contrast(words, colour));
      return all;
    };
    const double best = std::max(least({0xFF, 0xFF, 0xFF}), least({0x23, 0x28, 0x2E}));
    if (std::abs(best - 4.5) < 0.02) continue;
    EXPECT_EQ(isTold(printWarnings(label({"Soap"}, 50, 25, colours)), ProblemCode::TextFaint),
              best < 4.5)
        << best;
    if (!colours.pattern) continue;
    colours.pattern->plate = true;
    EXPECT_FALSE(isTold(printWarnings(label({"Soap"}, 50, 25, colours)), ProblemCode::TextFaint));
  }
}

/// Between the darkest and the lightest colour of a picture may lie the very colour of the words.
TEST(PrintWarnings, APictureOfAllTonesTakesNoWordsWithoutAPlate) {
  CardColours colours;
  colours.pattern =
      PaperPattern{kPicturePaper, Length::mm(40), 0, {{128, 128, 128}, {0, 0, 0}, {255, 255, 255}}};
  colours.pattern->picture = PaperPicture{};
  EXPECT_LT(wordsOn(colours).contrast, 1.5);
  colours.pattern->colours = {{230, 230, 230}, {200, 200, 200}, {255, 255, 255}};
  EXPECT_GT(wordsOn(colours).contrast, 4.5);
}

/// A PNG of its header and its end alone (ISO/IEC 15948, 5.2, 5.3, 11.2.2).
std::string pngOf(int width, int height) {
  const auto number = [](int n) {
    std::string out;
    for (int shift = 24; shift >= 0; shift -= 8) out += static_cast<char>(n >> shift & 0xFF);
    return out;
  };
  const std::string sum(4, '\0');
  return std::string("\x89PNG\r\n\x1A\n") + number(13) + "IHDR" + number(width) + number(height) +
         std::string("\x08\x02\0\0\0", 5) + sum + number(0) + "IEND" + sum;
}

/// Half a download, and a picture that would fill the memory: they came into a design file by other
/// ways than this program.
TEST(PrintWarnings, APictureThatCannotBeShownIsTold) {
  const auto told = [](const std::string& bytes) {
    CardColours colours;
    colours.pattern = PaperPattern{kPicturePaper, Length::mm(40), 0, {}};
    colours.pattern->picture = PaperPicture{};
    colours.pattern->picture->file = PictureFile(bytes);
    return isTold(printWarnings(label({}, 50, 25, colours)), ProblemCode::PictureBroken);
  };
  const std::string whole = pngOf(800, 600);
  EXPECT_FALSE(told(whole));
  for (std::size_t half = 0; half < whole.size(); ++half) EXPECT_TRUE(told(whole.substr(0, half)));
  EXPECT_TRUE(told(pngOf(30'000, 20)));
  EXPECT_TRUE(told(pngOf(9'000, 9'000)));
  EXPECT_FALSE(told(pngOf(16'000, 3'000)));
}

/// Words in letters as wide as they come are made to fit their place, round or square, and where
/// they cannot, that is told.
TEST(PrintWarnings, WordsFitTheirPlaceOrAreTold) {
  Random random(12);
  int smaller = 0;
  int tooLarge = 0;
  for (int i = 0; i < 400; ++i) {
    std::string line(static_cast<std::size_t>(random.whole(1, 24)), i % 2 == 0 ? 'W' : 'i');
    const bool round = random.whole(0, 1) == 1;
    const double width = random.between(12, 60);
    const double height = random.between(10, 40);
    const BuiltPiece piece = label({line, "tea"}, width, height, {}, round);
    const Piece drawn = flatPiece("label", {piece.net.panels[0].outline, {}}, {line, "tea"});
    smaller += piece.net.inscriptions[0].height < drawn.net.inscriptions[0].height ? 1 : 0;
    const bool warned = isTold(printWarnings(piece), ProblemCode::TextTooLarge);
    tooLarge += warned ? 1 : 0;
    // By its corners: the box of the words inside the outline.
    for (const Inscription& words : piece.net.inscriptions) {
      const double half = typeWidth(words.text, words.height) / 2;
      bool within = true;
      for (const Point corner : {Point{-half, -0.25 * words.height},
                                 {half, -0.25 * words.height},
                                 {half, 0.95 * words.height},
                                 {-half, 0.95 * words.height}})
        within =
            within && locate(words.at + corner, piece.net.panels[0].outline, 0.01) != Side::Outside;
      EXPECT_TRUE(within || warned) << line << ' ' << width << ' ' << height << round;
    }
    if (warned) {
      EXPECT_LE(piece.net.inscriptions[0].height, kSmallestPoints * kPoint + 1e-6);
    }
  }
  EXPECT_GT(smaller, 20);
  EXPECT_GT(tooLarge, 10);
}

}  // namespace
}  // namespace creasewright
