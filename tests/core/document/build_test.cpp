#include "document/build.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "document/design_file.h"
#include "folding/motion/motion_check.h"
#include "folding/motion/needed_bends.h"
#include "styles/registry.h"
#include "support/random.h"

namespace creasewright {
namespace {

const ToolGrid kGrids[] = {ToolGrid::none(), ToolGrid::eighthInch(), ToolGrid::sixteenthInch(),
                           ToolGrid::millimetre()};

Design randomDesign(testing::Random& random, const Style& style) {
  Design design;
  design.styleId = style.id;
  design.card = {"test", "test card", Length::mm(random.between(0.15, 0.6)), 0};
  design.grid = kGrids[random.whole(0, 3)];
  design.ease = static_cast<Ease>(random.whole(0, 2));
  design.product = Product{ProductShape::Box, Length::mm(random.between(5, 250)),
                           Length::mm(random.between(5, 200)), Length::mm(random.between(1, 200))};
  design.parameters =
      fit(style, *design.product, design.ease, {design.card.caliper, design.grid}).parameters;
  return design;
}

std::string describe(const BuiltDesign& built) {
  std::string text = productText(*built.design.product) + ", caliper " +
                     std::to_string(built.design.card.caliper.mm()) + ":";
  for (const Problem& p : built.problems)
    text += " " + std::string(codeName(p.code)) + " at " + p.where;
  return text;
}

/// A fitted design passes every check: sound net, mates in place, room for the product with ease.
TEST(Build, EveryFittedDesignHoldsItsProduct) {
  testing::Random random(51);
  for (const Style& style : styles()) {
    int built = 0;
    for (int i = 0; i < 300; ++i) {
      const Design design = randomDesign(random, style);
      const Result<BuiltDesign> result = build(design);
      ASSERT_TRUE(result.ok()) << style.id << ' ' << result.problem().where;
      EXPECT_TRUE(result->problems.empty()) << style.id << ' ' << describe(*result);
      ++built;
    }
    EXPECT_EQ(built, 300) << style.id;
  }
}

TEST(Build, TooSmallABoxForItsProductIsSaid) {
  testing::Random random(52);
  for (const Style& style : styles()) {
    Design design = randomDesign(random, style);
    design.product->length = design.product->length * 3 + Length::mm(400);  // after fitting
    const Result<BuiltDesign> result = build(design);
    ASSERT_TRUE(result.ok()) << style.id;
    const auto lacks = std::ranges::count_if(result->problems, [](const Problem& problem) {
      return problem.code == ProblemCode::CavityTooSmall && problem.where == "length";
    });
    EXPECT_EQ(lacks, 1) << style.id;
  }
}

// A style makes its net of its measures; only flaps that give way know the grid (blank_on_grid).
TEST(Build, StylesMakeTheSameNetOnEveryGrid) {
  for (const Style& style : styles()) {
    if (style.id == "rolled-wall-tray") continue;  // its tongues end on the tool grid
    const Parameters parameters = standardParameters(style);
    const auto a = style.build(parameters, {Length::mm(0.3), ToolGrid::sixteenthInch()});
    const auto b = style.build(parameters, {Length::mm(0.3), ToolGrid::millimetre()});
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i)
      EXPECT_EQ(flatten(a[i].net).panels, flatten(b[i].net).panels) << style.id;
  }
}

TEST(Build, NeverFailsOtherThanByAProblem) {
  testing::Random random(53);
  for (const Style& style : styles()) {
    int refused = 0;
    for (int i = 0; i < 60; ++i) {
      Design design = randomDesign(random, style);
      for (const ParameterSpec& spec : style.parameters)
        design.parameters.setCount(spec.key, random.whole(-2'000'000'000, 2'000'000'000));
      const auto result = build(design);
      if (result.ok()) continue;
      ++refused;
      EXPECT_FALSE(result.problem().where.empty());
      EXPECT_FALSE(limitProblems(design).empty());
    }
    EXPECT_GT(refused, 40) << style.id;
  }
}

/// No reading is longer than the board, and the design keeps its board in its file.
TEST(Build, ReadingsStayWithinTheBoard) {
  Design design = *newDesign("straight-tuck-box", *parseProduct("box:160x60x120mm"), cards()[0],
                             Ease::Easy, ToolGrid::millimetre());
  const auto longest = [](const BuiltDesign& built) {
    Length most;
    for (const ScoreSetup& setup : built.pieces[0].scorePlan.setups)
      for (const ScoreReading& reading : setup.readings) most = std::max(most, reading.at);
    return most;
  };
  const Length free = longest(build(design).value());
  ASSERT_GT(free, Length::mm(200));  // else the test would say nothing
  design.board = Length::mm(240);
  EXPECT_LE(longest(build(design).value()), design.board);
  const Result<Design> read = readDesign(writeDesign(design), "x");
  ASSERT_TRUE(read.ok());
  EXPECT_EQ(*read, design);
}

/// Guides and files ask for the way of folding again and again: a built piece and its copies find
/// it once, and it is what the net alone says.
TEST(Build, TheWayOfFoldingIsFoundOnceForAPieceAndItsCopies) {
  const Design blank;
  int bent = 0;
  for (const Style& style : styles()) {
    const BuiltDesign built =
        *build(*newDesign(style.id, std::nullopt, blank.card, blank.ease, blank.grid));
    const BuiltDesign copy = built;
    for (std::size_t i = 0; i < built.pieces.size(); ++i) {
      const BuiltPiece& piece = built.pieces[i];
      const double caliper = piece.card.caliper.mm();
      EXPECT_EQ(&foldPlan(piece), &foldPlan(copy.pieces[i]));
      EXPECT_EQ(&pathProblems(copy.pieces[i]), &pathProblems(piece));
      EXPECT_EQ(pathProblems(piece), checkFoldPath(piece.net, caliper)) << style.id;
      std::vector<BendCode> told;
      for (const FoldStage& stage : foldPlan(piece).stages)
        told.insert(told.end(), stage.bends.begin(), stage.bends.end());
      std::vector<BendCode> needed;
      for (const Bend& bend : withNeededBends(piece.net, caliper).bends) needed.push_back(bend.why);
      std::ranges::sort(told);
      std::ranges::sort(needed);
      EXPECT_EQ(told, needed) << style.id;
      bent += told.empty() ? 0 : 1;
    }
  }
  EXPECT_GT(bent, 5);
}

TEST(Once, FindsWhenFirstAskedAndNeverAgain) {
  int asked = 0;
  const auto find = [&asked] { return ++asked; };
  const Once<int> one;
  const Once<int> copy = one;
  const Once<int> other;
  EXPECT_EQ(copy.get(find), 1);
  EXPECT_EQ(one.get(find), 1);
  EXPECT_EQ(other.get(find), 2);
}

}  // namespace
}  // namespace creasewright
