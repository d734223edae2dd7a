#include <algorithm>
#include <map>

#include <gtest/gtest.h>

#include "core/extras/built_extras.h"
#include "document/build_extras.h"
#include "document/design_file.h"
#include "folding/cavity/outside.h"
#include "guide/make_guide.h"
#include "styles/registry.h"
#include "support/random.h"

namespace creasewright {
namespace {

using testing::built;
using testing::clearOf;
using testing::extraOf;
using testing::fitted;
using testing::hostOf;
using testing::onFace;
using testing::piecesOf;

/// Every corner of the mat against every edge of the face and its openings.
void expectInset(const BuiltPiece& mat, const FacePlace& face, const Panel& panel, double inset) {
  for (const Point& p : onFace(mat, face)) {
    EXPECT_EQ(locate(p, panel.outline), Side::Inside);
    EXPECT_GE(clearOf(panel.outline, p), inset - 1e-4);
    for (const Polygon& hole : panel.openings) EXPECT_GE(clearOf(hole, p), inset - 1e-4);
  }
}

TEST(Extras, MatsLieInsideEveryFaceThatShows) {
  testing::Random random(71);
  int mats = 0;
  for (const Style& style : styles()) {
    Design design = fitted(random, style);
    design.extras = {extraOf("mats", design)};
    const BuiltDesign whole = built(design);
    for (const BuiltPiece* mat : piecesOf(whole, 0)) {
      EXPECT_EQ(mat->count, static_cast<int>(mat->role->faces.size()));
      for (const FacePlace& face : mat->role->faces) {
        const Panel& panel =
            hostOf(whole, face).net.panels.at(static_cast<std::size_t>(face.panel));
        EXPECT_TRUE(panel.shows);
        expectInset(*mat, face, panel, Length::inches(1, 16).mm());
        ++mats;
      }
    }
  }
  EXPECT_GT(mats, 100);
}

TEST(Extras, ABandOrSleeveGoesOverItsBox) {
  testing::Random random(72);
  std::map<std::string, int> placed;
  for (const Style& style : styles())
    for (const char* kind : {"belly-band", "sleeve"}) {
      Design design = fitted(random, style);
      design.extras = {extraOf(kind, design)};
      const BuiltDesign whole = built(design);
      const auto pieces = piecesOf(whole, 0);
      if (pieces.empty()) continue;
      const BuiltPiece& box = whole.pieces.front();
      ASSERT_TRUE(box.cavity) << style.id;
      const double caliper = design.card.caliper.mm();
      CavitySize outside = measureOutside(box.net, box.folded, *box.cavity, caliper);
      std::array<double, 3> sizes{outside.length, outside.width, outside.height};
      std::ranges::sort(sizes);
      const BuiltPiece& band = *pieces.front();
      const CavitySize inside = measureCavity(band.net, band.folded, *band.cavity, caliper);
      if (whole.pieces.size() > 2) continue;  // the lid is the larger one
      // It lies across the longest side; the two others must go through.
      EXPECT_GE(std::max(inside.width, inside.height), sizes[1] - 1e-6) << style.id;
      EXPECT_GE(std::min(inside.width, inside.height), sizes[0] - 1e-6) << style.id;
      EXPECT_LE(std::max(inside.width, inside.height), sizes[1] + 6) << style.id;
      ++placed[kind];
    }
  EXPECT_GE(placed["belly-band"], 8);
  EXPECT_GE(placed["sleeve"], 8);
}

// Ease and card are added to the box as it is, and the sum goes to the grid: the play is what was
// meant and less than one step more.
TEST(Extras, ABandIsRoundedOnce) {
  testing::Random random(74);
  for (int i = 0; i < 60; ++i) {
    Design design = fitted(random, **findStyle("straight-tuck-box"));
    design.grid = random.whole(0, 1) == 0 ? ToolGrid::eighthInch() : ToolGrid::millimetre();
    design.extras = {extraOf("belly-band", design)};
    const BuiltDesign whole = built(design);
    const auto pieces = piecesOf(whole, 0);
    if (pieces.empty()) continue;
    const BuiltPiece& box = whole.pieces.front();
    const double caliper = design.card.caliper.mm();
    const CavitySize out = measureOutside(box.net, box.folded, *box.cavity, caliper);
    const std::array<double, 3> sizes{out.length, out.width, out.height};
    const double front = bounds(pieces.front()->net.panels.front().outline).width();
    const double meant = easeFor(ProductShape::Box, design.ease).mm() + caliper;
    const bool once = std::ranges::any_of(sizes, [&](double size) {
      const double play = front - size;
      return play > meant - 1e-6 && play < meant + design.grid.step().mm();
    });
    EXPECT_TRUE(once) << front << " round " << sizes[0] << ' ' << sizes[1] << ' ' << sizes[2];
  }
}

TEST(Extras, MatsAreOnTheGridAndEqualOnesAreOnePiece) {
  testing::Random random(75);
  for (const char* style : {"straight-tuck-box", "two-piece-box", "open-sleeve", "drawer-box"}) {
    Design design = fitted(random, **findStyle(style));
    design.extras = {extraOf("mats", design)};
    const BuiltDesign whole = built(design);
    const auto mats = piecesOf(whole, 0);
    for (std::size_t i = 0; i < mats.size(); ++i) {
      const FlatNet& flat = mats[i]->flat;
      EXPECT_TRUE(design.grid.holds(Length::mm(flat.width))) << style << ' ' << flat.width;
      EXPECT_TRUE(design.grid.holds(Length::mm(flat.height))) << style << ' ' << flat.height;
      for (std::size_t k = 0; k < i; ++k)
        EXPECT_FALSE(std::abs(flat.width - mats[k]->flat.width) < 1e-3 &&
                     std::abs(flat.height - mats[k]->flat.height) < 1e-3 &&
                     std::abs(area(flat.outline) - area(mats[k]->flat.outline)) < 1e-3)
            << style << ' ' << mats[i]->name;
    }
  }
  // Front and back differ by a caliper, and so would their mats without the grid.
  Design box = *newDesign("straight-tuck-box", *parseProduct("box:60x35x120mm"), cards()[0],
                          Ease::Easy, ToolGrid::millimetre());
  box.extras = {extraOf("mats", box)};
  const BuiltDesign tea = built(box);
  EXPECT_EQ(piecesOf(tea, 0).size(), 3U);
  for (const BuiltPiece* mat : piecesOf(tea, 0)) EXPECT_EQ(mat->count, 2);
}

/// A mat narrower than 6 mm is not worth cutting: rounding down to the marks of the tools must not
/// make one of a face that is barely wide enough.
TEST(Extras, RoundingMakesNoMatTooNarrowToCut) {
  int narrow = 0;
  for (const char* id : {"open-sleeve", "drawer-box", "two-piece-box", "straight-tuck-box"})
    for (int tenths = 70; tenths < 130; tenths += 2) {
      Design box = *newDesign(id, *parseProduct("box:60x35x120mm"), cards()[0], Ease::Easy,
                              ToolGrid::sixteenthInch());
      for (const char* key : {"height", "depth", "width"})
        if (box.parameters.has(key)) {
          box.parameters.set(key, Length::mm(tenths / 10.0));
          break;
        }
      box.extras = {extraOf("mats", box)};
      const Result<BuiltDesign> whole = build(box);
      if (!whole.ok()) continue;
      for (const BuiltPiece* mat : piecesOf(*whole, 0)) {
        const double least = std::min(mat->flat.width, mat->flat.height);
        EXPECT_GE(least, 6 - 1e-9) << id << ' ' << tenths;
        narrow += least < 7 ? 1 : 0;
      }
    }
  EXPECT_GT(narrow, 0);
}

TEST(Extras, TheirNetsAreSoundOnEveryStyle) {
  testing::Random random(73);
  int made = 0;
  for (const Style& style : styles()) {
    Design design = fitted(random, style);
    for (const ExtraKind& kind : extraKinds())
      if (kind.id != "window") design.extras.push_back(extraOf(kind.id, design));
    const BuiltDesign whole = built(design);
    for (const Problem& problem : whole.problems)
      EXPECT_TRUE(
          problem.code == ProblemCode::ExtraNoPlace || problem.code == ProblemCode::ExtraCovered ||
          problem.code == ProblemCode::ExtraInAir || problem.code == ProblemCode::ExtraTooLarge ||
          problem.code == ProblemCode::ExtraInsideSmall ||
          problem.code == ProblemCode::ExtraNotRound || problem.code == ProblemCode::ExtraUnhung ||
          problem.code == ProblemCode::ExtraRoomTaken ||
          problem.code == ProblemCode::ExtraUnderRound ||
          problem.code == ProblemCode::ParameterTooSmall ||
          problem.code == ProblemCode::ParameterTooLarge)
          << style.id << ' ' << codeName(problem.code) << ' ' << problem.where;
    made += static_cast<int>(whole.pieces.size());
  }
  EXPECT_GT(made, 150);
}

Design teaBox() {
  Design design = *newDesign("straight-tuck-box", *parseProduct("box:60x35x120mm"), cards()[0],
                             Ease::Easy, ToolGrid::millimetre());
  return design;
}

TEST(Extras, AWindowIsCutAndItsFilmCoversItWithoutReachingAFold) {
  Design design = teaBox();
  design.extras = {extraOf("window", design), extraOf("mats", design)};
  const BuiltDesign whole = built(design);
  EXPECT_TRUE(whole.problems.empty());
  const BuiltPiece& film = *piecesOf(whole, 0).at(0);
  const FacePlace& face = film.role->faces.at(0);
  const Panel& panel = hostOf(whole, face).net.panels.at(static_cast<std::size_t>(face.panel));
  ASSERT_EQ(panel.openings.size(), 1U);
  const Polygon sheet = onFace(film, face);
  for (const Point& p : panel.openings[0]) {
    EXPECT_EQ(locate(p, sheet), Side::Inside);
    EXPECT_GE(clearOf(sheet, p), 5.9);
    EXPECT_GE(clearOf(panel.outline, p), 5 - 1e-6);
  }
  for (const Point& p : sheet) EXPECT_GE(clearOf(panel.outline, p), 1 - 1e-4);
  const auto opened = std::ranges::count_if(piecesOf(whole, 1), [](const BuiltPiece* mat) {
    return !mat->net.panels[0].openings.empty();
  });
  EXPECT_EQ(opened, 1);  // the mat of that face has an opening of its own
}

TEST(Extras, AWindowsFilmIsGluedInBeforeTheBoxIsFolded) {
  Design design = teaBox();
  design.extras = {extraOf("window", design), extraOf("belly-band", design)};
  const Guide guide = makeGuide(built(design));
  const auto at = [&](auto test) {
    return std::ranges::find_if(guide.steps, test) - guide.steps.begin();
  };
  const auto film = at([](const Step& s) { return s.code == StepCode::AddExtra && s.extra == 0; });
  const auto band = at([](const Step& s) { return s.code == StepCode::AddExtra && s.extra == 1; });
  const auto fold = at([](const Step& s) { return s.code == StepCode::FoldStage; });
  EXPECT_LT(film, fold);
  EXPECT_EQ(band, static_cast<std::ptrdiff_t>(guide.steps.size()) - 1);
}

TEST(Extras, TheyFollowTheProduct) {
  Design design = teaBox();
  for (const char* kind : {"belly-band", "greeting-slip", "label", "ribbon"})
    design.extras.push_back(extraOf(kind, design));
  const BuiltDesign small = built(design);
  design.product->length = design.product->length + Length::mm(20);
  const BuiltDesign large = built(refitted(design));
  const auto width = [](const BuiltDesign& d, int extra) {
    return piecesOf(d, extra).at(0)->flat.width;
  };
  EXPECT_GT(width(large, 0), width(small, 0) + 30);
  EXPECT_NEAR(width(large, 1), width(small, 1) + 20, 1e-6);
  EXPECT_GT(width(large, 2), width(small, 2));
  EXPECT_GT(large.ribbons.at(0).length, small.ribbons.at(0).length);
}

TEST(Extras, APlatformFillsTheBoxAndHoldsTheProduct) {
  Design design = *newDesign("straight-tuck-box", *parseProduct("cylinder:50x60mm"), cards()[0],
                             Ease::Easy, ToolGrid::millimetre());
  design.parameters.set("length", Length::mm(80));
  design.parameters.set("width", Length::mm(80));
  design.extras = {extraOf("platform", design)};
  const BuiltDesign whole = built(design);
  ASSERT_TRUE(whole.problems.empty());
  const BuiltPiece& insert = *piecesOf(whole, 0).at(0);
  const Panel& top = insert.net.panels.front();
  const CavitySize inside = *whole.pieces.front().cavitySize;
  EXPECT_LE(bounds(top.outline).width(), inside.length - 1 + 1e-6);
  EXPECT_GE(bounds(top.outline).width(), inside.length - 4);
  EXPECT_LE(bounds(top.outline).height(), inside.width - 1 + 1e-6);
  EXPECT_GE(bounds(top.openings.at(0)).width(), 50 + 3);  // and the ease of round things
  EXPECT_GT(top.openings.at(0).size(), 20U);              // round, as the product
}

TEST(Extras, WhatCannotBeIsSaidAndTheRestIsMade) {
  Design design = *newDesign("tapered-cup", *parseProduct("box:40x40x60mm"), cards()[0], Ease::Easy,
                             ToolGrid::millimetre());
  design.extras = {extraOf("belly-band", design), extraOf("mats", design)};
  design.extras[0].face = "";
  const BuiltDesign cup = built(design);
  ASSERT_EQ(cup.problems.size(), 1U);
  EXPECT_EQ(cup.problems[0].code, ProblemCode::ExtraNotRound);
  EXPECT_EQ(cup.problems[0].where, "belly-band");
  EXPECT_FALSE(piecesOf(cup, 1).empty());

  Design box = teaBox();
  box.extras = {extraOf("label", box), extraOf("label", box), extraOf("ribbon", box)};
  box.extras[0].parameters.set("width", Length::mm(200));
  box.extras[1].face = "box:nowhere";
  box.extras[2].parameters.set("width", Length::mm(200));
  const BuiltDesign tea = built(box);
  ASSERT_EQ(tea.problems.size(), 3U);
  EXPECT_EQ(tea.problems[0].code, ProblemCode::ExtraTooLarge);
  EXPECT_EQ(tea.problems[1].code, ProblemCode::ExtraFaceUnknown);
  EXPECT_EQ(tea.problems[2].code, ProblemCode::ParameterTooLarge);
}

TEST(Extras, AreSavedWithTheDesign) {
  Design design = teaBox();
  for (const ExtraKind& kind : extraKinds()) design.extras.push_back(extraOf(kind.id, design));
  design.extras[3].lines = {"Plum jam", "from the mill"};
  design.extras[3].face = "box:front";
  const Result<Design> read = readDesign(writeDesign(design), "x");
  ASSERT_TRUE(read.ok()) << read.problem().where;
  EXPECT_EQ(*read, design);
}

TEST(Extras, ADesignOfVersionOneHasNone) {
  Design design =
      *newDesign("platform-insert", std::nullopt, cards()[0], Ease::Easy, ToolGrid::millimetre());
  std::string text = writeDesign(design);
  const auto cut = [&](std::string_view from, std::string_view to) {
    const std::size_t at = text.find(from);
    ASSERT_NE(at, std::string::npos) << from;
    text.replace(at, from.size(), to);
  };
  cut("\"version\": " + std::to_string(kDesignVersion), "\"version\": 1");
  cut("\"extras\": [],", "");
  cut("\"edits\": [],", "");
  cut("\"side-margin\": \"15 mm\"", "\"margin\": \"15 mm\"");
  cut("\"round\": false,", "");
  const Result<Design> read = readDesign(text, "x");
  ASSERT_TRUE(read.ok()) << read.problem().where;
  EXPECT_EQ(*read, design);
}

// A circle has one size: the width that is chosen, or the height where only that is.
TEST(Extras, ACircleTakesTheSizeThatIsChosen) {
  Design design = *newDesign("straight-tuck-box", *parseProduct("box:70x40x120mm"),
                             *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  design.extras = {extraOf("label", design)};
  design.extras.front().parameters.setCount("shape", 1);  // a circle
  const auto sizeWith = [&](const char* key, double mm) {
    Design sized = design;
    sized.extras.front().parameters.set("width", Length());
    sized.extras.front().parameters.set("height", Length());
    sized.extras.front().parameters.set(key, Length::mm(mm));
    const BuiltDesign whole = built(sized);
    const auto pieces = piecesOf(whole, 0);
    const auto top = std::ranges::find(pieces, "label", &BuiltPiece::name);
    EXPECT_NE(top, pieces.end());
    const Bounds box = bounds((*top)->net.panels.front().outline);
    EXPECT_NEAR(box.width(), box.height(), 1e-6);
    return box.width();
  };
  EXPECT_NEAR(sizeWith("width", 24), 24, 1e-6);
  EXPECT_NEAR(sizeWith("height", 22), 22, 1e-6);
}

}  // namespace
}  // namespace creasewright
