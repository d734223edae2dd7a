#include "pages/pale_paper.h"

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "drawing/contrast.h"
#include "guide/make_guide.h"
#include "pages/design_picture.h"
#include "pages/paper_print.h"
#include "pages/product_in_box.h"
#include "patterns/pattern.h"
#include "support/random.h"

namespace creasewright {
namespace {

using testing::Random;

BuiltDesign inPaper(const CardColours& colours, const char* product = "box:60x35x20mm") {
  Design design = newDesign("framed-tray", parseProduct(product).value(), cards().front(),
                            Ease::Easy, ToolGrid::millimetre())
                      .value();
  design.card.colours = colours;
  return build(design).value();
}

/// Law: lines of all roles stand out by 3 to 1 (WCAG 2.1, 1.4.11) from whatever colour a net lies
/// on, and card that is light already keeps its own.
TEST(PalePaper, LinesStandOutOnCardOfAnyColour) {
  Random random(31);
  for (int i = 0; i < 200; ++i) {
    const auto part = [&] { return static_cast<std::uint8_t>(random.whole(0, 255)); };
    CardColours colours;
    colours.face = Colour{part(), part(), part()};
    if (i % 3 == 0) {
      colours.pattern = usualPaper(patterns()[static_cast<std::size_t>(random.whole(0, 15))]);
      colours.patternBehind = i % 2 == 0;
    }
    const BuiltDesign design = inPaper(colours);
    const std::vector<PathItem> print = palePrint(design, design.pieces.front());
    ASSERT_FALSE(print.empty());
    for (const PathItem& item : print)
      for (const Role role : {Role::Cut, Role::Valley, Role::Mountain, Role::Dimension})
        EXPECT_GE(contrast(roleStyle(role).colour, *item.colour), 2.95) << hexText(*item.colour);
  }
  const CardColours cream{parseColour("cream").value()};
  EXPECT_EQ(paleColour(inPaper(cream).pieces.front()), cream.face);
  EXPECT_FALSE(paleColour(inPaper({}).pieces.front()));
}

TEST(PalePaper, APictureOfTheNetShowsItAndAFileForMachinesDoesNot) {
  const BuiltDesign design = inPaper({parseColour("plum").value()});
  const auto fills = [&](bool coloured) {
    int count = 0;
    for (const PathItem& item : pictureOf(design, {.coloured = coloured}).paths)
      count += item.role == Role::Face ? 1 : 0;
    return count;
  };
  EXPECT_EQ(fills(true), 1);
  EXPECT_EQ(fills(false), 0);
}

TEST(ProductColour, IsSeenInTheFoldedPictureAndReadBack) {
  const Colour plum = parseColour("plum").value();
  const auto shown = [](const BuiltDesign& design, const Colour& colour) {
    for (const PathItem& item : pictureOf(design, {.folded = true}).paths)
      if (item.surface == Surface::Product && item.colour == colour) return true;
    return false;
  };
  EXPECT_TRUE(shown(inPaper({}, "box:60x35x20mm:plum"), plum));
  EXPECT_FALSE(shown(inPaper({}, "box:60x35x20mm"), plum));
  for (const char* text :
       {"sphere:42.7mm:#9AAF90", "tube:35x20x110mm", "card:85.6x54x0.76mm:plum"}) {
    const Product product = parseProduct(text).value();
    EXPECT_EQ(parseProduct(productText(product)).value(), product);
  }
  EXPECT_EQ(parseProduct("sphere:42.7mm:plumm").problem().code, ProblemCode::ColourUnknown);
}

}  // namespace
}  // namespace creasewright
