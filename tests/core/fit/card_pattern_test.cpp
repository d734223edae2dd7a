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

TEST(CardPattern, APictureIsItsFileAndSettingsBehindIt) {
  const auto read = pictureText("picture:/a/b:c.png:scale=80mm:tiled=no");
  ASSERT_TRUE(read);
  EXPECT_EQ(read->file, "/a/b:c.png");
  EXPECT_EQ(read->settings, "scale=80mm:tiled=no");
  EXPECT_EQ(pictureText("picture:x.svg")->settings, "");
  EXPECT_FALSE(pictureText("pictures:x.svg"));
  EXPECT_EQ(withPattern({}, "picture").problem().code, ProblemCode::PictureNoFile);
  EXPECT_EQ(withPattern({}, "picture:scale=3mm").problem().code, ProblemCode::PictureNoFile);
}

TEST(CardPattern, APictureHasShiftsAndMayBeThereOnce) {
  // A PNG's signature and its header chunk, 3 x 2 pixels (ISO/IEC 15948, 5.2 and 11.2.2).
  const std::string bytes("\x89PNG\r\n\x1A\n\0\0\0\rIHDR\0\0\0\3\0\0\0\2", 24);
  PaperPattern paper{kPicturePaper, Length::mm(30), 0, {}};
  paper.picture = PaperPicture{PictureFile(bytes)};
  const auto card =
      withPaper({}, paper, "right=-5mm:up=1/2in:tiled=no:turn=90:side=back:plate=yes:scale=12mm");
  ASSERT_TRUE(card);
  EXPECT_EQ(card->pattern->picture->right, Length::mm(-5));
  EXPECT_EQ(card->pattern->picture->up, Length::inches(1, 2));
  EXPECT_FALSE(card->pattern->picture->tiled);
  EXPECT_TRUE(card->pattern->plate && card->patternBehind);
  EXPECT_EQ(card->pattern->scale, Length::mm(12));
  for (const char* wrong : {"right=2000mm", "up=x", "tiled=maybe", "colours=sage", "scale=10km"})
    EXPECT_FALSE(withPaper({}, paper, wrong)) << wrong;
  EXPECT_FALSE(withPattern({}, "dots:tiled=no")) << "a pattern is always over and over";
  EXPECT_TRUE(withPattern({}, "dots:plate=yes")->pattern->plate);
}

TEST(CardPattern, PicturesSayHowLargeTheyAre) {
  const std::string png("\x89PNG\r\n\x1A\n\0\0\0\rIHDR\0\0\1\3\0\0\0\2", 24);
  EXPECT_EQ(pixelsOf(png), (PixelSize{259, 2}));
  EXPECT_FALSE(pixelsOf(png.substr(0, 20)));
  // A JPEG's start, a comment, a frame of 5 x 7 (ISO/IEC 10918-1, B.2.2).
  const std::string jpeg("\xFF\xD8\xFF\xFE\0\4ab\xFF\xC0\0\x0B\x08\0\7\0\5\1\1\x11\0", 21);
  EXPECT_EQ(pixelsOf(jpeg), (PixelSize{5, 7}));
  EXPECT_FALSE(pixelsOf(jpeg.substr(0, 9)));
  EXPECT_FALSE(pixelsOf("<svg/>"));
}

TEST(CardPattern, WhatIsWrittenIsReadBack) {
  for (const char* text : {"dots:scale=18 mm", "leaves:scale=1 in:turn=90:side=back",
                           "stripes:scale=12.5 mm:colours=sage/cream:plate=yes"}) {
    const Result<CardColours> read = withPattern({}, text);
    ASSERT_TRUE(read) << text;
    const Result<CardColours> again = withPattern({}, patternText(*read));
    ASSERT_TRUE(again) << patternText(*read);
    EXPECT_EQ(*again, *read) << text;
  }
  EXPECT_EQ(patternText({}), "");
}

}  // namespace
}  // namespace creasewright
