#include "pages/fold_words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include <gtest/gtest.h>

#include "core/extras/in_space.h"
#include "drawing/set_words.h"
#include "extras/layer_stack.h"
#include "folding/surfaces/upright.h"
#include "pages/design_picture.h"
#include "pages/dressing.h"
#include "styles/registry.h"
#include "support/random.h"

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::Random;

Design standing(std::string_view style, const char* product = "box:90x60x30mm") {
  return *newDesign(style, *parseProduct(product), *findCard("300gsm"), Ease::Easy,
                    ToolGrid::millimetre());
}

Extra written(const Design& design, std::vector<std::string> lines) {
  Extra label = extraOf("label", design);
  label.lines = std::move(lines);
  return label;
}

struct WordsSeen {
  FoldPicture picture;
  Drawing words;
  std::vector<Inscription> asked;
};

WordsSeen seenIn(const BuiltDesign& whole, const View& view) {
  const BuiltPiece& piece = whole.pieces.front();
  const Dressed shown = dressed(whole, piece);
  const Point3 up = uprightOf(piece);
  WordsSeen out{drawFolded(shown.net, shown.pose, frontView(view, up), up), {}, shown.words};
  out.words = wordsSeen(out.picture, shown.looks, shown.words);
  return out;
}

/// The facet that is painted last at a point.
const Facet* topAt(const FoldPicture& picture, Point at) {
  const Facet* top = nullptr;
  for (const Facet& facet : picture.facets)
    if (locate(at, facet.outline) == Side::Inside) top = &facet;
  return top;
}

bool within(const std::vector<Polygon>& rings, Point p) {
  bool in = false;
  for (const Polygon& ring : rings) in = in != (locate(p, ring) == Side::Inside);
  return in;
}

/// Law: from every side words are seen where their card's outside is seen, and nowhere else; never
/// in a mirror; upright where their face stands.
TEST(FoldWords, AreSeenWhereTheirCardIsFromEverySide) {
  Random random(21);
  int drawn = 0;
  int hidden = 0;
  int partly = 0;
  for (const Style& style : styles()) {
    Design design = standing(style.id);
    design.extras = {written(design, {"Plum jam", "2026"})};
    // A small layer hides a part of them.
    if (random.whole(0, 1) == 0) {
      ExtraLayer layer = standardLayer(design.card);
      layer.parameters.setCount("shape", static_cast<std::int64_t>(LabelShape::Heart));
      layer.parameters.set("width", Length::mm(8));
      layer.parameters.set("height", Length::mm(7));
      design.extras.front().layers = {layer};
    }
    Extra band = extraOf("belly-band", design);
    if (random.whole(0, 1) == 0) {
      design.extras.front().host = kOnBox;
      design.extras.push_back(band);
    }
    const auto whole = build(design);
    if (!whole) continue;
    for (int i = 0; i < 6; ++i) {
      const View view{Angle::degrees(random.between(-180, 180)),
                      Angle::degrees(random.between(-85, 85))};
      const WordsSeen seen = seenIn(*whole, view);
      for (const Inscription& line : seen.asked) {
        const auto text = std::ranges::find_if(seen.words.texts, [&](const TextItem& each) {
          return each.label.literal == line.text;
        });
        const bool there = text != seen.words.texts.end();
        // Twenty points of the line, by the plane of the panel alone.
        const PlaneMap plane = seen.picture.planes.at(static_cast<std::size_t>(line.panel));
        if (std::abs(plane.factor()) < 0.02) continue;
        int asked = 0;
        for (int k = 0; k < 20; ++k) {
          const Point own = line.at + Point{random.between(-0.3, 0.3) * line.height,
                                            random.between(0.1, 0.6) * line.height};
          const Point at = plane.apply(own);
          const Facet* top = topAt(seen.picture, at);
          const bool shows =
              top != nullptr && top->panel == line.panel && top->face == Face::Outside;
          const bool told = there && (text->shown.empty() || within(text->shown, at));
          // Points on a border belong to either.
          const bool border = std::ranges::any_of(seen.picture.facets, [&](const Facet& facet) {
            return locate(at, facet.outline, 0.02) == Side::Boundary;
          });
          if (border) continue;
          ++asked;
          EXPECT_EQ(shows, told) << style.id << ' ' << line.text;
          (shows ? drawn : hidden) += 1;
        }
        if (!there || asked == 0) continue;
        partly += text->shown.empty() ? 0 : 1;
        const WordsRun run = wordsRuns(*text, line.text).front();
        EXPECT_GT(run.place.factor(), 0) << style.id << ": in a mirror";
      }
    }
  }
  EXPECT_GT(drawn, 300);
  EXPECT_GT(hidden, 300);
  EXPECT_GT(partly, 3);
}

/// On a wall letters stand upright for who looks from its front, in the middle of the label.
TEST(FoldWords, StandUprightInTheMiddleOfTheirLabel) {
  for (const char* style : {"straight-tuck-box", "framed-tray", "pitched-roof-box"}) {
    Design design = standing(style, "box:60x35x90mm");
    design.extras = {written(design, {"Soap"})};
    const BuiltDesign whole = built(design);
    const WordsSeen seen = seenIn(whole, standardView());
    ASSERT_EQ(seen.words.texts.size(), 1U) << style;
    const TextItem& text = seen.words.texts.front();
    const WordsRun run = wordsRuns(text, "Soap").front();
    EXPECT_GT(run.place.y.y, 0) << style;
    EXPECT_GT(run.place.x.x, 0) << style;
    Point middle;
    for (const Point& p : wordsArea(text, "Soap")) middle = middle + p / 4;
    const auto label = std::ranges::find_if(seen.picture.facets, [&](const Facet& facet) {
      return facet.panel == seen.asked.front().panel;
    });
    ASSERT_NE(label, seen.picture.facets.end());
    const Bounds box = bounds(label->outline);
    EXPECT_LT(distance(middle, (box.low + box.high) / 2), 2) << style;
  }
}

/// On a face that lies level and up they are read by who stands before the box.
TEST(FoldWords, OnALidTheyAreReadFromTheFront) {
  int judged = 0;
  for (const Style& style : styles()) {
    for (const bool banded : {false, true}) {
      Design design = standing(style.id);
      design.extras = {written(design, {"Tea"})};
      if (banded) design.extras.insert(design.extras.begin(), extraOf("belly-band", design));
      const auto whole = build(design);
      if (!whole) continue;
      for (const BuiltPiece& piece : whole->pieces) {
        if (piece.role) continue;
        Dressed shown = dressed(*whole, piece);
        // As it stands in the gift, where it does.
        const auto there = testing::inSpace(*whole, piece);
        const Point3 up = uprightOf(there ? whole->pieces.front() : piece);
        for (Transform& panel : shown.pose) panel = there.value_or(Transform()).after(panel);
        const FoldPicture picture = drawFolded(
            shown.net, shown.pose, frontView({Angle::degrees(0), Angle::degrees(60)}, up), up);
        for (const TextItem& text : wordsSeen(picture, shown.looks, shown.words).texts) {
          const PlaneMap run = wordsRuns(text, "Tea").front().place;
          ++judged;
          EXPECT_GT(run.y.y, 0) << style.id << banded;
          EXPECT_GT(run.x.x, 0) << style.id << banded;
        }
      }
    }
  }
  EXPECT_GT(judged, 30);
}

/// A tag and a slip lie by themselves with their words up.
TEST(FoldWords, AreReadOnWhatLiesByItself) {
  Design design = standing("straight-tuck-box");
  design.extras = {extraOf("tag", design), extraOf("greeting-slip", design)};
  for (Extra& extra : design.extras) extra.lines = {"Tea"};
  const BuiltDesign made = built(design);
  int judged = 0;
  for (const BuiltPiece& piece : made.pieces) {
    if (piece.net.inscriptions.empty()) continue;
    const Drawing picture = pictureOf(made, {.piece = piece.name, .folded = true});
    ASSERT_EQ(picture.texts.size(), 1U) << piece.name;
    const PlaneMap run = wordsRuns(picture.texts.front(), "Tea").front().place;
    EXPECT_GT(run.y.y, 0);
    EXPECT_GT(run.x.x, 0);
    EXPECT_GT(run.factor(), 0);
    ++judged;
  }
  EXPECT_EQ(judged, 2);
}

/// What is told to lie at the right of a face lies at the right of who looks at it.
TEST(FoldWords, RightIsAtTheRightOfWhoLooks) {
  const auto middleOf = [](int anchor, double across, int turn) {
    Design design = standing("straight-tuck-box", "box:80x35x90mm");
    Extra label = written(design, {"Tea"});
    label.parameters.setCount("mat", 0);
    label.parameters.set("width", Length::mm(25));
    label.parameters.set("height", Length::mm(12));
    label.parameters.setCount("anchor", anchor);
    label.parameters.set("across", Length::mm(across));
    label.parameters.setCount("turn", turn);
    label.host = kOnBox;
    design.extras = {label};
    const BuiltDesign whole = built(design);
    EXPECT_TRUE(whole.problems.empty());
    const WordsSeen seen = seenIn(whole, {Angle::degrees(0), Angle::degrees(0)});
    EXPECT_EQ(seen.words.texts.size(), 1U);
    return wordsRuns(seen.words.texts.at(0), "Tea").front().place;
  };
  const PlaneMap middle = middleOf(1, 0, 0);
  EXPECT_GT(middleOf(5, 0, 0).origin.x, middle.origin.x + 10);  // right
  EXPECT_LT(middleOf(4, 0, 0).origin.x, middle.origin.x - 10);  // left
  EXPECT_NEAR(middleOf(1, 12, 0).origin.x, middle.origin.x + 12, 0.01);
  const PlaneMap turned = middleOf(1, 0, 30);  // against the clock
  EXPECT_NEAR(std::atan2(turned.x.y, turned.x.x), 30 * std::acos(-1.0) / 180, 1e-6);
}

/// White where that stands out, on a white plate where the paper has one, and in files as text.
TEST(FoldWords, StandOutFromTheirPaper) {
  Design design = standing("straight-tuck-box");
  design.extras = {written(design, {"Truffles"})};
  design.extras[0].card.colours.face = Colour{0x30, 0x1A, 0x10};
  const Drawing dark = pictureOf(built(design), {.folded = true});
  ASSERT_EQ(dark.texts.size(), 1U);
  EXPECT_TRUE(dark.texts[0].reversed);
  design.extras[0].card.colours.face = Colour{0xF6, 0xEC, 0xD0};
  EXPECT_FALSE(pictureOf(built(design), {.folded = true}).texts.at(0).reversed);
}

}  // namespace
}  // namespace creasewright
