#include <algorithm>

#include <gtest/gtest.h>

#include "drawing/contrast.h"
#include "drawing/role.h"
#include "extras/extra_kind.h"
#include "pages/design_picture.h"
#include "pages/dressing.h"
#include "pages/fold_drawing.h"
#include "pages/gift.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr Colour kOut{0x9A, 0xAF, 0x90};
constexpr Colour kIn{0xF6, 0xEC, 0xD0};
constexpr Colour kBand{0x5A, 0x35, 0x65};

Design coloured(std::string_view style) {
  Design design = *newDesign(style, {}, *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  design.card.colours = {kOut, kIn};
  return design;
}

// Law: every face of the box is seen in the colour of the side of the card that it is.
TEST(FoldColours, EveryFaceHasTheColourOfItsSide) {
  int inside = 0;
  for (const Style& style : styles()) {
    const auto built = build(coloured(style.id));
    ASSERT_TRUE(built) << style.id;
    const Drawing picture = pictureOf(*built, {.extra = kNoExtras, .folded = true});
    int faces = 0;
    for (const PathItem& item : picture.paths) {
      if (item.role != Role::Face) continue;
      ++faces;
      const bool in = item.surface == Surface::Inside;
      inside += in;
      ASSERT_TRUE(item.colour) << style.id;
      EXPECT_EQ(*item.colour, in ? kIn : kOut) << style.id;
    }
    EXPECT_GE(faces, 2) << style.id;
  }
  EXPECT_GT(inside, 20);
}

TEST(FoldColours, WhatGoesOntoTheBoxKeepsItsOwnColour) {
  Design design = coloured("straight-tuck-box");
  for (const char* kind : {"belly-band", "ribbon"}) {
    Extra extra = standardExtra(**findExtraKind(kind), design.card);
    extra.card.colours = {kBand, {}};
    design.extras = {extra};
    const auto built = build(design);
    ASSERT_TRUE(built);
    ASSERT_TRUE(built->problems.empty()) << kind;
    const Dressed shown = Gift(*built).at({}).shown;
    ASSERT_EQ(shown.looks.size(), shown.net.panels.size());
    const std::size_t own = built->pieces.front().net.panels.size();
    ASSERT_GT(shown.looks.size(), own) << kind;
    for (std::size_t i = 0; i < shown.looks.size(); ++i)
      EXPECT_EQ(shown.looks[i].colours.face, i < own ? kOut : kBand) << kind << i;
    const Drawing picture = pictureOf(*built, {.folded = true});
    EXPECT_TRUE(std::ranges::any_of(picture.paths,
                                    [](const PathItem& item) { return item.colour == kBand; }));
  }
}

/// The fill of what is painted last at a point, or white paper.
Colour seenAt(Point at, const Drawing& picture) {
  Colour seen{255, 255, 255};
  for (const PathItem& item : picture.paths)
    if (item.role == Role::Face && locate(at, item.rings.front()) != Side::Outside)
      seen = fillColour(item);
  return seen;
}

// Law: every edge stands out from the darker of what lies on its two sides, whatever colour the
// card has. 3:1 is what WCAG 2.1 asks of graphics.
TEST(FoldColours, EdgesShowOnEveryNamedColour) {
  constexpr double kLeast = 3;
  int light = 0;
  for (const NamedColour& named : namedColours()) {
    Design design = coloured("gable-box");
    design.card.colours = {named.colour, {}};
    const auto built = build(design);
    ASSERT_TRUE(built);
    const Drawing picture = pictureOf(*built, {.folded = true});
    int edges = 0;
    for (const PathItem& item : picture.paths) {
      if (item.role != Role::Edge) continue;
      const Colour ink = item.colour.value_or(roleStyle(Role::Edge).colour);
      light += item.colour.has_value();
      for (const Polygon& line : item.rings) {
        if (distance(line[0], line[1]) < 1) continue;
        ++edges;
        const Point beside = turnLeft(unit(line[1] - line[0])) * 0.3;
        const Point middle = (line[0] + line[1]) / 2;
        const Colour left = seenAt(middle + beside, picture);
        const Colour right = seenAt(middle - beside, picture);
        const Colour darker = luminance(left) < luminance(right) ? left : right;
        EXPECT_GE(contrast(ink, darker), kLeast) << named.id << ' ' << hexText(darker);
      }
    }
    EXPECT_GT(edges, 20) << named.id;
  }
  EXPECT_GT(light, 5);
}

}  // namespace
}  // namespace creasewright
