#include "drawing/in_black.h"

#include <algorithm>
#include <cmath>
#include <map>

#include <gtest/gtest.h>

#include "drawing/role.h"
#include "pages/paper_print.h"
#include "patterns/pattern.h"

namespace creasewright {
namespace {

bool isGrey(Colour c) { return c.red == c.green && c.green == c.blue; }

/// By its definition, apart from the library's (WCAG 2.1, relative luminance).
double lightOf(Colour c) {
  const auto linear = [](int part) {
    const double value = part / 255.0;
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue);
}

double ratio(Colour a, Colour b) {
  const auto [dark, light] = std::minmax({lightOf(a), lightOf(b)});
  return (light + 0.05) / (dark + 0.05);
}

Drawing printOf(const PaperPattern& paper) {
  CardColours card;
  card.pattern = paper;
  Drawing out{120, 120, {}, {}};
  out.paths = printOn(region(Polygon{{0, 0}, {120, 0}, {120, 120}, {0, 120}}), card, false, {});
  return out;
}

/// Law: all that is left of a pattern of any kind is grey, and two of its colours that differ are
/// told apart, also where they are alike in light.
TEST(InBlack, EveryPatternKeepsItsColoursApartInGrey) {
  const std::vector<Colour> alike{{0xC0, 0x50, 0x50}, {0x30, 0x80, 0x60}, {0x50, 0x70, 0xA0}};
  for (const PatternKind& kind : patterns())
    for (const bool own : {false, true}) {
      PaperPattern paper = usualPaper(kind);
      if (own) paper.colours = alike;
      const Drawing coloured = printOf(paper);
      const Drawing grey = inBlack(coloured);
      ASSERT_EQ(grey.paths.size(), coloured.paths.size());
      std::map<std::string, Colour> found;
      for (std::size_t i = 0; i < grey.paths.size(); ++i) {
        ASSERT_TRUE(isGrey(*grey.paths[i].colour));
        const auto [known, added] =
            found.emplace(hexText(*coloured.paths[i].colour), *grey.paths[i].colour);
        EXPECT_EQ(known->second, *grey.paths[i].colour);  // each colour is one grey
      }
      EXPECT_GT(found.size(), 1u) << kind.id;
      for (const auto& [one, a] : found)
        for (const auto& [other, b] : found) {
          if (one == other) continue;
          EXPECT_GE(ratio(a, b), 1.15) << kind.id << ' ' << one << ' ' << other;
        }
    }
}

/// What needs no room is as light as it was, and what was lighter stays so.
TEST(InBlack, AColourKeepsItsLight) {
  Drawing drawing{10, 10, {}, {}};
  for (const Colour colour : {Colour{0xC0, 0x50, 0x50}, Colour{0xF7, 0xEC, 0xD6}})
    drawing.paths.push_back({.role = Role::Face,
                             .rings = {{{0, 0}, {1, 0}, {1, 1}}},
                             .closed = true,
                             .filled = true,
                             .colour = colour});
  const Drawing grey = inBlack(drawing);
  for (std::size_t i = 0; i < 2; ++i) {
    EXPECT_TRUE(isGrey(*grey.paths[i].colour));
    EXPECT_NEAR(lightOf(*grey.paths[i].colour), lightOf(*drawing.paths[i].colour), 0.005);
  }
}

TEST(InBlack, DarkLinesAndWordsAreBlackAndLightOnesStayLight) {
  Drawing drawing{10, 10, {}, {}};
  drawing.paths.push_back({.role = Role::Valley, .rings = {{{0, 0}, {1, 0}}}});
  drawing.paths.push_back(
      {.role = Role::Edge, .rings = {{{0, 0}, {1, 0}}}, .colour = Colour{0xF1, 0xED, 0xE4}});
  drawing.texts.push_back({.label = Label::plain("a"), .at = {}, .like = Role::Mountain});
  const Drawing grey = inBlack(drawing);
  EXPECT_EQ(*grey.paths[0].colour, (Colour{0, 0, 0}));
  EXPECT_GT(lightOf(*grey.paths[1].colour), 0.8);
  EXPECT_EQ(textColour(grey.texts[0]), (Colour{0, 0, 0}));
}

}  // namespace
}  // namespace creasewright
