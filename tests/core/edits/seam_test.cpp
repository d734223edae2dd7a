// A blank in two halves, glued together at a second seam.

#include <gtest/gtest.h>

#include "document/build.h"
#include "document/halves.h"
#include "edits/kinds/crease_site.h"
#include "edits/kinds/halves.h"
#include "folding/motion/motion_check.h"
#include "guide/make_guide.h"
#include "kits/build_kit.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

Design boxFor(std::string_view style, const char* product) {
  return *newDesign(style, *parseProduct(product), *findCard("300gsm"), Ease::Easy,
                    ToolGrid::millimetre());
}

const BuiltPiece& called(const BuiltDesign& built, const std::string& name) {
  return *std::ranges::find(built.pieces, name, &BuiltPiece::name);
}

double panelAreas(const Net& net) {
  double sum = 0;
  for (const Panel& panel : net.panels) sum += signedArea(panel.outline);
  return sum;
}

/// Where every panel's corners lie in the folded box, by its name, seen from the first panel.
std::map<std::string, std::vector<Point3>> foldedCorners(const Net& net) {
  const Pose folded = pose(net, 1.0);
  std::map<std::string, std::vector<Point3>> corners;
  for (std::size_t i = 0; i < net.panels.size(); ++i)
    for (const Point& p : net.panels[i].outline)
      corners[net.panels[i].id].push_back(folded[i].apply(p));
  return corners;
}

std::ptrdiff_t faultsBesidesRoom(const BuiltDesign& built) {
  return std::ranges::count_if(built.problems, [](const Problem& problem) {
    return problem.code != ProblemCode::CavityTooSmall;
  });
}

/// Both halves are made, and the folded box is the one it was; the tab takes its own thickness of
/// the room, and no more.
void expectSameBox(const BuiltDesign& plain, const BuiltDesign& halved, const std::string& what) {
  ASSERT_EQ(halved.pieces.size(), plain.pieces.size() + 1) << what;
  EXPECT_EQ(faultsBesidesRoom(halved), faultsBesidesRoom(plain)) << what;
  const auto half = std::ranges::find_if(
      halved.pieces, [&](const BuiltPiece& piece) { return wholeOf(halved, piece).has_value(); });
  ASSERT_NE(half, halved.pieces.end()) << what;
  const BuiltPiece& box = called(plain, half->name);
  const Whole whole = *wholeOf(halved, *half);
  const auto now = foldedCorners(whole.net);
  const std::string flap = half->net.panels.back().id;
  EXPECT_EQ(now.size(), box.net.panels.size() + 1) << what;
  for (const auto& [id, corners] : foldedCorners(box.net)) {
    ASSERT_EQ(now.at(id).size(), corners.size()) << what << ' ' << id;
    for (std::size_t i = 0; i < corners.size(); ++i)
      EXPECT_LT(distance(now.at(id)[i], corners[i]), 1e-6) << what << ' ' << id;
  }
  EXPECT_NEAR(panelAreas(whole.net),
              panelAreas(box.net) + signedArea(half->net.panels.back().outline), 1e-6)
      << what;
  if (box.cavitySize) {
    const double tab = half->card.caliper.mm();
    const auto taken = [&](double CavitySize::*size) {
      return (*box.cavitySize).*size - (*half->cavitySize).*size;
    };
    for (const auto size : {&CavitySize::length, &CavitySize::width, &CavitySize::height})
      EXPECT_LE(taken(size), tab + 1e-6) << what;
    // Between walls that are not square a box may be longer where it is narrower.
    const auto room = [](const CavitySize& size) { return size.length * size.width * size.height; };
    EXPECT_LE(room(*half->cavitySize), room(*box.cavitySize) * (1 + 1e-4)) << what;
  }
  EXPECT_TRUE(std::ranges::any_of(half->gluePlan, [&](const GlueArea& area) {
    return area.onto < 0 && half->net.panels[static_cast<std::size_t>(area.panel)].id == flap;
  })) << what;
}

// A jar of 8 cm by 9 cm needs a blank of about 35 x 27 cm; each half goes onto A4 (ISO 216).
TEST(SecondSeam, ABoxForAJamJarIsMadeOfTwoHalvesOnA4) {
  Design design = boxFor("straight-tuck-box", "cylinder:70x90mm");
  const BuiltDesign plain = *build(design);
  ASSERT_EQ(plain.pieces.size(), 1U);
  const auto fits = [](const BuiltPiece& piece) {
    const auto [low, high] = std::minmax({piece.flat.width, piece.flat.height});
    return low <= 210 && high <= 297;
  };
  ASSERT_FALSE(fits(plain.pieces.front())) << "else the test says nothing";
  design.edits = {{"seam", {}, "front/left", "inner", {}, true}};
  const BuiltDesign halved = *build(design);
  ASSERT_TRUE(halved.brokenEdits.empty());
  expectSameBox(plain, halved, "jam jar");
  EXPECT_TRUE(halved.problems.empty());
  for (const BuiltPiece& piece : halved.pieces)
    EXPECT_TRUE(fits(piece)) << piece.name << ' ' << piece.flat.width << " x " << piece.flat.height;
  for (const BuiltPiece& piece : halved.pieces)
    EXPECT_TRUE(pathProblems(piece).empty()) << piece.name;
  // Both seams take adhesive: the new one, and that of the style, which now joins the halves too.
  int across = 0;
  for (const BuiltPiece& piece : halved.pieces)
    for (const GlueArea& area : piece.gluePlan) across += area.onto < 0 ? 1 : 0;
  EXPECT_EQ(across, 2);
}

TEST(SecondSeam, TheHalvesAreGluedFlatAndFoldedTogetherStageByStage) {
  Design design = boxFor("straight-tuck-box", "cylinder:70x90mm");
  design.edits = {{"seam", {}, "front/left", "inner", {}, true}};
  const BuiltDesign halved = *build(design);
  const Guide guide = makeGuide(halved);
  int glued = -1;
  int firstFold = -1;
  double progress = 0;
  int put = 0;
  for (int i = 0; i < static_cast<int>(guide.steps.size()); ++i) {
    const Step& step = guide.steps[static_cast<std::size_t>(i)];
    if (step.code == StepCode::GluePieces) glued = i;
    if (step.code == StepCode::PutIn || step.putIn) ++put;
    if (step.code != StepCode::FoldStage) continue;
    if (firstFold < 0) firstFold = i;
    EXPECT_GE(step.figure.progressFrom, progress - 1e-9) << i;
    progress = step.figure.progressFrom;
  }
  EXPECT_GE(glued, 0);
  EXPECT_GT(firstFold, glued);
  EXPECT_EQ(put, 1);
}

// A change on the second half is made before the blank is divided, and is found there.
TEST(SecondSeam, WhatIsChangedOnTheSecondHalfStaysThere) {
  Design design = boxFor("straight-tuck-box", "cylinder:70x90mm");
  const Edit seam{"seam", {}, "front/left", "inner", {}, true};
  design.edits = {seam, {"opening", "other-half", "front/left/back", {}, {}, true}};
  const BuiltDesign halved = *build(design);
  ASSERT_TRUE(halved.brokenEdits.empty());
  const Net& other = called(halved, "other-half").net;
  EXPECT_EQ(other.panels[static_cast<std::size_t>(*other.find("front/left/back"))].openings.size(),
            1U);
}

TEST(SecondSeam, AKitCutsBothHalves) {
  Design design = boxFor("straight-tuck-box", "cylinder:70x90mm");
  design.edits = {{"seam", {}, "front/left", "inner", {}, true}};
  ClassKit kit;
  kit.takers = 3;
  kit.items.push_back({design});
  const auto built = buildKit(kit);
  ASSERT_TRUE(built);
  ASSERT_EQ(built->cards.size(), 1U);
  EXPECT_EQ(built->cards.front().demands.size(), 2U);
}

/// Whether adhesive or slots hold the piece to another one, or another one to it.
bool heldFast(const BuiltDesign& built, const BuiltPiece& piece) {
  return std::ranges::any_of(built.pieces, [&](const BuiltPiece& each) {
    return each.held && each.held->by != Hold::Loose &&
           (each.name == piece.name || each.held->to == piece.name);
  });
}

/// Every style at every fold, for three products: where a seam can be, the box is the same. A lid
/// may have one; a piece that is held fast to another one may not.
TEST(SecondSeam, AnyStyleThatTakesOneFoldsIntoTheSameBox) {
  int made = 0;
  int loose = 0;
  int stylesWith = 0;
  for (const Style& style : styles()) {
    const int before = made;
    for (const char* product : {"box:90x60x100mm", "box:120x120x40mm", "box:60x60x60mm"}) {
      Result<Design> design = newDesign(style.id, *parseProduct(product), *findCard("300gsm"),
                                        Ease::Easy, ToolGrid::none());
      if (!design) continue;
      const Result<BuiltDesign> plain = build(*design);
      if (!plain) continue;
      for (const BuiltPiece& piece : plain->pieces) {
        for (std::size_t i = 1; i < piece.net.panels.size(); i += 2) {
          const auto folds = edgesWithFolds(piece.net, static_cast<int>(i));
          if (folds.empty()) continue;
          Design changed = *design;
          const char* face = i % 4 == 1 ? "inside" : "outside";
          changed.edits = {
              {"seam", piece.name, piece.net.panels[i].id, folds.front(), {{"face", face}}, true}};
          const Result<BuiltDesign> halved = build(changed);
          ASSERT_TRUE(halved);
          if (!halved->brokenEdits.empty()) continue;
          ++made;
          loose += piece.held ? 1 : 0;
          EXPECT_FALSE(heldFast(*plain, piece)) << style.id << ' ' << piece.name;
          expectSameBox(
              *plain, *halved,
              std::string(style.id) + ' ' + piece.net.panels[i].id + ' ' + product + ' ' + face);
          EXPECT_FALSE(makeGuide(*halved).steps.empty());
        }
      }
    }
    stylesWith += made > before ? 1 : 0;
  }
  std::cout << made << " seams in " << stylesWith << " styles\n";
  EXPECT_GT(stylesWith, 15);
  EXPECT_GT(loose, 0);
}

}  // namespace
}  // namespace creasewright
