#include <iostream>
#include <map>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "document/design_file.h"
#include "edits/kinds/edit_kind.h"
#include "support/random_edit.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

using testing::freeEdge;
using testing::Random;
using testing::randomEdit;

Design tuckBox(const char* product) {
  return *newDesign("straight-tuck-box", *parseProduct(product), *findCard("300gsm"), Ease::Easy,
                    ToolGrid::millimetre());
}

Edit onPanel(std::string kind, std::string panel,
             std::map<std::string, std::string, std::less<>> measures, std::string edge = {}) {
  return {std::move(kind), {}, std::move(panel), std::move(edge), std::move(measures), true};
}

const Panel& panelOf(const BuiltDesign& built, const std::string& id) {
  const Net& net = built.pieces.front().net;
  return net.panels[static_cast<std::size_t>(*net.find(id))];
}

double cardArea(const BuiltDesign& built) {
  double sum = 0;
  for (const BuiltPiece& piece : built.pieces) sum += area(piece.flat.outline);
  return sum;
}

std::size_t slitCount(const BuiltDesign& built) {
  std::size_t count = 0;
  for (const BuiltPiece& piece : built.pieces) count += piece.net.slits.size();
  return count;
}

TEST(Edits, AHeartStaysInTheMiddleOfTheFrontWhenTheSizeChanges) {
  for (const char* product : {"box:60x35x120mm", "box:90x50x70mm", "box:40x25x150mm"}) {
    Design design = tuckBox(product);
    const Result<BuiltDesign> plain = build(design);
    ASSERT_TRUE(plain);
    const std::string front = plain->pieces.front().net.panels.front().id;
    design.edits = {onPanel(
        "opening", front,
        {{"shape", "heart"}, {"width", "panel-width - 2 * 12 mm"}, {"height", "this-width"}})};
    const Result<BuiltDesign> built = build(design);
    ASSERT_TRUE(built);
    EXPECT_TRUE(built->brokenEdits.empty()) << product;
    const Panel& panel = panelOf(*built, front);
    ASSERT_EQ(panel.openings.size(), panelOf(*plain, front).openings.size() + 1) << product;
    const Bounds hole = bounds(panel.openings.back());
    const Bounds whole = bounds(panel.outline);
    EXPECT_NEAR(hole.low.x + hole.high.x, whole.low.x + whole.high.x, 1e-6);
    EXPECT_NEAR(hole.low.y + hole.high.y, whole.low.y + whole.high.y, 1e-6);
    EXPECT_NEAR(hole.width(), hole.height(), 1e-6);
    EXPECT_LT(cardArea(*built), cardArea(*plain));
    EXPECT_EQ(built->problems.size(), plain->problems.size());
  }
}

// A scallop bows outwards: it turns inwards only where two bows meet, and it fills its size.
TEST(Edits, AScallopedOpeningTurnsInwardsOnlyBetweenItsBows) {
  Design design = tuckBox("box:60x35x120mm");
  const std::string front = build(design)->pieces.front().net.panels.front().id;
  design.edits = {
      onPanel("opening", front, {{"shape", "scallop"}, {"width", "40 mm"}, {"height", "30 mm"}})};
  const BuiltDesign built = *build(design);
  ASSERT_TRUE(built.brokenEdits.empty());
  Polygon ring = panelOf(built, front).openings.back();
  if (signedArea(ring) < 0) std::ranges::reverse(ring);
  EXPECT_NEAR(bounds(ring).width(), 40, 1e-6);
  EXPECT_NEAR(bounds(ring).height(), 30, 1e-6);
  std::size_t inwards = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i];
    const Point b = ring[(i + 1) % ring.size()];
    inwards += cross(b - a, ring[(i + 2) % ring.size()] - b) < -1e-9 ? 1 : 0;
  }
  EXPECT_GT(inwards, 4U);
  EXPECT_LT(inwards, ring.size() / 6) << "most corners lie on bows";
}

/// A design with an edit on the first cut edge that takes it; nothing where none does.
std::optional<BuiltDesign> onSomeEdge(Design design, Edit edit) {
  const BuiltDesign plain = *build(design);
  const BuiltPiece& box = plain.pieces.front();
  for (std::size_t i = 0; i < box.net.panels.size(); ++i) {
    edit.panel = box.net.panels[i].id;
    edit.edge = freeEdge(box, i);
    design.edits = {edit};
    const Result<BuiltDesign> built = build(design);
    if (built && built->brokenEdits.empty()) return *built;
  }
  return std::nullopt;
}

TEST(Edits, AThumbNotchAndAScallopedEdgeTakeWhatTheirShapesSay) {
  const Design design = tuckBox("box:60x35x120mm");
  const Result<BuiltDesign> plain = build(design);
  ASSERT_TRUE(plain);
  const auto notched = onSomeEdge(
      design,
      onPanel("notch", {}, {{"shape", "half-round"}, {"width", "8 mm"}, {"depth", "4 mm"}}));
  ASSERT_TRUE(notched);
  // Half a circle of 4 mm, its arc drawn by 32 chords.
  EXPECT_NEAR(cardArea(*plain) - cardArea(*notched), 3.14159 * 16 / 2, 0.1);
  const auto scalloped = onSomeEdge(
      design, onPanel("edge", {}, {{"shape", "scallop"}, {"depth", "2 mm"}, {"count", "4"}}));
  ASSERT_TRUE(scalloped);
  EXPECT_LT(cardArea(*scalloped), cardArea(*plain) - 1);
}

TEST(Edits, ARoundedCornerTakesLessThanACutOne) {
  const Design design = tuckBox("box:60x35x120mm");
  const Result<BuiltDesign> plain = build(design);
  ASSERT_TRUE(plain);
  const auto taken = [&](const char* shape) {
    const auto made = onSomeEdge(
        design, onPanel("corners", {}, {{"shape", shape}, {"size", "3 mm"}, {"ends", "both"}}));
    return made ? cardArea(*plain) - cardArea(*made) : 0.0;
  };
  // Square corners lose a square without its quarter circle, or half a square, each.
  EXPECT_NEAR(taken("round"), 2 * 9 * (1 - 3.14159 / 4), 0.3);
  EXPECT_NEAR(taken("cut"), 2 * 9 * 0.5, 0.3);
}

TEST(Edits, WhatCannotBeMadeIsToldAndKept) {
  Design design = tuckBox("box:60x35x120mm");
  const std::string front = build(design)->pieces.front().net.panels.front().id;
  const auto codeOf = [&](Edit edit) -> std::string {
    design.edits = {std::move(edit)};
    const Result<BuiltDesign> built = build(design);
    if (!built) return "not built";
    if (built->design.edits != design.edits) return "lost";
    return built->brokenEdits.empty() ? "made"
                                      : std::string(codeName(built->brokenEdits.at(0).code));
  };
  EXPECT_EQ(codeOf(onPanel("opening", front, {})), "made");
  EXPECT_EQ(codeOf(onPanel("opening", "attic", {})), "edit-place-gone");
  EXPECT_EQ(codeOf(onPanel("notch", front, {}, "brim")), "edit-place-gone");
  EXPECT_EQ(codeOf(onPanel("opening", front, {{"width", "panel-width"}})), "edit-unfit");
  EXPECT_EQ(codeOf(onPanel("opening", front, {{"width", "panel-width / 0"}})),
            "formula-zero-division");
  EXPECT_EQ(codeOf(onPanel("opening", front, {{"width", "this-height"}, {"height", "this-width"}})),
            "formula-circle");
  EXPECT_EQ(codeOf(onPanel("opening", front, {{"width", "panel-width - 3"}})), "formula-units");
  EXPECT_EQ(codeOf(onPanel("opening", front, {{"width", "brim"}})), "formula-unknown-name");
  EXPECT_EQ(codeOf(onPanel("holes", front, {{"count", "0"}})), "formula-out-of-range");
  EXPECT_EQ(codeOf(onPanel("holes", front, {{"count", "2 mm"}})), "formula-units");
  Edit off = onPanel("opening", "attic", {});
  off.on = false;
  EXPECT_EQ(codeOf(off), "made");
}

TEST(Edits, NoCutGoesAcrossAScore) {
  Design design = tuckBox("box:60x35x120mm");
  // So narrow that it lies between the places at which the net's own check looks.
  design.edits = {onPanel("notch", "front/left/back", {{"width", "4 mm"}, {"x", "3 mm"}}, "inner"),
                  onPanel("notch", "front", {{"width", "4 mm"}, {"x", "3 mm"}}, "left")};
  const Result<BuiltDesign> built = build(design);
  ASSERT_TRUE(built);
  for (const int index : {0, 1}) {
    ASSERT_TRUE(built->brokenEdits.contains(index)) << index;
    EXPECT_EQ(built->brokenEdits.at(index).code, ProblemCode::EditUnfit);
  }
}

/// Everything of a net that an edit may change.
std::vector<double> printOf(const BuiltDesign& built) {
  std::vector<double> print;
  for (const BuiltPiece& piece : built.pieces) {
    const Net& net = piece.net;
    for (const std::size_t count : {net.panels.size(), net.slits.size(), net.mates.size(),
                                    net.inscriptions.size(), net.marks.size()})
      print.push_back(static_cast<double>(count));
    print.push_back(area(piece.flat.outline));
    for (const Segment& parting : piece.flat.partings) print.push_back(length(parting));
    for (const Crease& crease : net.creases) {
      print.push_back(crease.angle.degrees());
      print.push_back(crease.isValley() ? 1 : 0);
      print.push_back(crease.kind == CreaseKind::Perforated ? 1 : 0);
    }
  }
  return print;
}

/// What does not hold of the nets themselves; a flap or a fold may well reach into the room that
/// the product needs, and that is told.
std::ptrdiff_t faultsOf(const BuiltDesign& built) {
  return std::ranges::count_if(
             built.problems,
             [](const Problem& problem) { return problem.code != ProblemCode::CavityTooSmall; }) -
         std::ssize(built.brokenEdits);
}

/// Every style with random edits, for three products each: it builds, what is made changes the net
/// and harms nothing, what is not made is told, and the file gives all of it back.
TEST(EditLaws, AnyStyleTakesAnyEditAndStaysSound) {
  Random random(1501);
  std::map<std::string, int> made;
  int broken = 0;
  for (const Style& style : styles()) {
    for (const char* product : {"box:60x35x120mm", "box:90x90x40mm", "box:40x40x40mm"}) {
      Result<Design> design = newDesign(style.id, *parseProduct(product), *findCard("300gsm"),
                                        Ease::Easy, ToolGrid::none());
      if (!design || !build(*design)) continue;
      Design changed = *design;
      for (int i = 0; i < 8; ++i) {
        const Result<BuiltDesign> before = build(changed);
        ASSERT_TRUE(before) << style.id;
        changed.edits.push_back(randomEdit(random, *before));
        const Result<BuiltDesign> after = build(changed);
        ASSERT_TRUE(after) << style.id;
        const int index = static_cast<int>(changed.edits.size()) - 1;
        const Edit& edit = changed.edits.back();
        const Result<Design> read = readDesign(writeDesign(changed), "random");
        ASSERT_TRUE(read) << style.id;
        EXPECT_EQ(*read, changed) << style.id;
        if (after->brokenEdits.contains(index)) {
          ++broken;
          EXPECT_EQ(printOf(*after), printOf(*before)) << style.id << ' ' << edit.kind;
          continue;
        }
        ++made[edit.kind];
        if ((*findEditKind(edit.kind))->reshapes) {
          EXPECT_NE(printOf(*after), printOf(*before))
              << style.id << ' ' << edit.kind << ' ' << edit.panel << ' ' << edit.edge;
        } else {
          EXPECT_TRUE(cardArea(*after) < cardArea(*before) - 1e-6 ||
                      slitCount(*after) > slitCount(*before))
              << style.id << ' ' << edit.kind << ' ' << edit.panel << ' ' << edit.edge;
        }
        EXPECT_LE(faultsOf(*after), faultsOf(*before))
            << style.id << ' ' << edit.kind << ' ' << edit.panel << ' ' << edit.edge << ' '
            << codeName(after->problems.back().code);
      }
    }
  }
  for (const EditKind& kind : editKinds()) {
    std::cout << kind.id << ": " << made[std::string(kind.id)] << " made\n";
    EXPECT_GT(made[std::string(kind.id)], 1) << kind.id;
  }
  std::cout << broken << " told as broken\n";
  EXPECT_GT(broken, 0);
}

}  // namespace
}  // namespace creasewright
