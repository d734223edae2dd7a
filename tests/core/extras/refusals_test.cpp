#include "base/problem_extra.h"
#include "core/extras/in_space.h"
#include "document/print_warnings.h"
#include "extras/layer_stack.h"

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::tells;
using testing::toldOf;

Design refusalDesign(std::string_view style = "straight-tuck-box",
                     const char* product = "box:60x35x120mm") {
  return *newDesign(style, *parseProduct(product), *findCard("220gsm"), Ease::Easy,
                    ToolGrid::millimetre());
}

Length lengthAt(const Problem& problem, std::size_t index) {
  return std::get<Length>(problem.values.at(index));
}
std::string textAt(const Problem& problem, std::size_t index) {
  return std::get<std::string>(problem.values.at(index));
}

TEST(Refusals, AnInsetThatIsTooLargeIsNamedWithTheMostThereIs) {
  Design design = refusalDesign();
  design.extras = {extraOf("label", design)};
  Extra& label = design.extras[0];
  label.parameters.set("width", Length::mm(40));
  label.parameters.set("height", Length::mm(40));
  label.parameters.setCount("mat", 0);
  label.layers = {standardLayer(design.card)};
  for (const int shape : {0, 2, 3, 5}) {
    label.layers[0].parameters.setCount("shape", shape);
    label.layers[0].parameters.set("inset", Length::mm(30));
    const BuiltDesign whole = built(design);
    const Problem* why = toldOf(whole, "label");
    ASSERT_NE(why, nullptr) << shape;
    ASSERT_EQ(why->code, ProblemCode::LayerInsetLarge) << shape;
    EXPECT_EQ(lengthAt(*why, 1), Length::mm(30));
    EXPECT_GT(lengthAt(*why, 2), Length::mm(5));
    label.layers[0].parameters.set("inset", lengthAt(*why, 2));
    EXPECT_TRUE(built(design).problems.empty()) << shape;
  }
}

TEST(Refusals, ASideIsCalledByItsName) {
  Design design = refusalDesign();
  design.extras = {extraOf("label", design)};
  Parameters& label = design.extras[0].parameters;
  label.set("width", Length::mm(200));
  const BuiltDesign wide = built(design);
  ASSERT_NE(toldOf(wide, "label"), nullptr);
  EXPECT_EQ(textAt(*toldOf(wide, "label"), 2), "width");
  label.set("width", Length::mm(20));
  label.set("height", Length::mm(200));
  const BuiltDesign high = built(design);
  ASSERT_NE(toldOf(high, "label"), nullptr);
  EXPECT_EQ(textAt(*toldOf(high, "label"), 2), "height");
}

TEST(Refusals, APlatformInABoxTooCloseToItsProductSaysWhatItNeeds) {
  Design design = refusalDesign("two-piece-box", "box:60x35x40mm");
  design.extras = {extraOf("platform", design)};
  const BuiltDesign close = built(design);
  const Problem* why = toldOf(close, "platform");
  ASSERT_NE(why, nullptr);
  ASSERT_EQ(why->code, ProblemCode::ExtraInsideSmall);
  EXPECT_LT(lengthAt(*why, 0), lengthAt(*why, 1));
  // The base as much larger as is told does.
  for (int i = 0; i < 4; ++i) {
    const BuiltDesign now = built(design);
    const Problem* still = toldOf(now, "platform");
    if (still == nullptr) break;
    ASSERT_EQ(still->code, ProblemCode::ExtraInsideSmall);
    const std::string side = textAt(*still, 2);
    const Length more = lengthAt(*still, 1) - lengthAt(*still, 0);
    design.parameters.set(side,
                          ToolGrid::millimetre().roundUp(design.parameters.length(side) + more));
  }
  EXPECT_EQ(toldOf(built(design), "platform"), nullptr);
}

TEST(Refusals, WhatHasNoSidesToGoRoundSaysSo) {
  for (const char* style : {"pillow-box", "tapered-cup"}) {
    Design design = refusalDesign(style, "box:60x40x20mm");
    design.extras = {extraOf("belly-band", design)};
    const BuiltDesign whole = built(design);
    const Problem* why = toldOf(whole, "belly-band");
    ASSERT_NE(why, nullptr) << style;
    EXPECT_EQ(why->code, ProblemCode::ExtraNotRound) << style;
  }
}

TEST(Refusals, AFullBandSaysThatItsWidthIsNotUsed) {
  Design design = refusalDesign("framed-tray", "box:89x64x25mm");
  design.extras = {extraOf("belly-band", design)};
  design.extras[0].parameters.setCount("full", 1);
  EXPECT_TRUE(built(design).problems.empty());
  design.extras[0].parameters.set("width", Length::mm(30));
  const BuiltDesign both = built(design);
  ASSERT_TRUE(tells(both, ProblemCode::ExtraWidthUnused));
  EXPECT_TRUE(onlyWarnings(both.problems));
}

TEST(Refusals, WhatOverhangsIsHeldByItsMiddle) {
  Design design = refusalDesign();
  design.extras = {extraOf("label", design)};
  Extra& label = design.extras[0];
  label.face = "box:front";
  label.parameters.set("width", Length::mm(30));
  label.parameters.set("height", Length::mm(20));
  label.parameters.setCount("overhang", 1);
  label.parameters.set("across", Length::mm(25));
  EXPECT_TRUE(built(design).problems.empty());
  label.parameters.set("across", Length::mm(40));
  const BuiltDesign off = built(design);
  ASSERT_NE(toldOf(off, "label"), nullptr);
  EXPECT_EQ(toldOf(off, "label")->code, ProblemCode::ExtraMiddleOff);
}

TEST(Refusals, WordsTooHighAreToldByTheirHeightAndMeasuresAsTheyAre) {
  Design design = refusalDesign();
  design.extras = {extraOf("label", design)};
  Extra& label = design.extras[0];
  label.parameters.set("width", Length::mm(20));
  label.parameters.set("height", Length::mm(10));
  label.parameters.setCount("mat", 0);
  label.lines = {"Soap"};
  label.parameters.setCount("points", 40);
  const auto warningsOf = [&] { return printWarnings(*testing::piecesOf(built(design), 0).at(0)); };
  const Problems high = warningsOf();
  const auto found = std::ranges::find(high, ProblemCode::TextTooHigh, &Problem::code);
  ASSERT_NE(found, high.end());
  // 40 pt are 14.1 mm; with what reaches above and below the line more than the 10 mm there are.
  EXPECT_GT(lengthAt(*found, 1), Length::mm(14));
  EXPECT_EQ(lengthAt(*found, 2), Length::mm(10));
  label.parameters.setCount("points", 6);
  const Problems small = warningsOf();
  const auto points = std::ranges::find(small, ProblemCode::TextSmall, &Problem::code);
  ASSERT_NE(points, small.end());
  EXPECT_NEAR(std::get<double>(points->values.at(1)), 6, 1e-9);
}

// Law: each length of each kind, smaller or larger than it may be, is told with its title and the
// kind that it is of.
TEST(Refusals, AMeasureOutsideItsLimitsIsOneOfItsExtra) {
  int told = 0;
  for (const ExtraKind& kind : extraKinds())
    for (const ParameterSpec& spec : kind.parameters)
      for (const Length wrong : {Length::mm(0.01), Length::mm(5000)}) {
        if (spec.kind != ParameterKind::Length) continue;
        SCOPED_TRACE(std::string(kind.id) + ' ' + std::string(spec.key));
        Design design = refusalDesign();
        design.extras = {extraOf(kind.id, design)};
        design.extras[0].parameters.set(spec.key, wrong);
        const BuiltDesign whole = built(design);
        const auto limit = std::ranges::find_if(whole.problems, [&](const Problem& problem) {
          return extraOfMeasure(problem) == kind.id;
        });
        if (limit == whole.problems.end()) continue;
        EXPECT_EQ(limit->where, spec.key);
        EXPECT_EQ(textAt(*limit, 2), std::string_view(spec.title));
        ++told;
      }
  EXPECT_GT(told, 25);
}

}  // namespace
}  // namespace creasewright
