#include "core/extras/in_space.h"
#include "extras/ribbon_picture.h"

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::piecesOf;
using testing::tells;
using testing::toldOf;

Design slidingDesign(std::string_view style = "straight-tuck-box",
                     const char* product = "box:60x35x120mm") {
  return *newDesign(style, *parseProduct(product), *findCard("220gsm"), Ease::Easy,
                    ToolGrid::millimetre());
}

TEST(Sliding, NothingSlidesOverFoamOrABowWhateverThatLiesOn) {
  Design design = slidingDesign();
  design.extras = {extraOf("belly-band", design), extraOf("label", design),
                   extraOf("sleeve", design)};
  Extra& label = design.extras[1];
  label.host = 0;
  label.parameters.set("width", Length::mm(30));
  label.parameters.set("height", Length::mm(15));
  label.parameters.setCount("hold", 2);
  const BuiltDesign onBand = built(design);
  ASSERT_TRUE(tells(onBand, ProblemCode::ExtraOverFoam));
  EXPECT_EQ(toldOf(onBand, "sleeve")->code, ProblemCode::ExtraOverFoam);
  EXPECT_TRUE(piecesOf(onBand, 2).empty());
  // Glued flat it is gone over, and the sleeve is larger by its card.
  const auto roundOf = [](const BuiltDesign& whole) {
    double round = 0;
    for (const BuiltPiece* piece : piecesOf(whole, 2))
      for (const Panel& panel : piece->net.panels) round += bounds(panel.outline).height();
    return round;
  };
  label.parameters.setCount("hold", 0);
  label.card.caliper = Length::mm(1.2);
  const BuiltDesign flat = built(design);
  EXPECT_TRUE(onlyWarnings(flat.problems));
  ASSERT_FALSE(piecesOf(flat, 2).empty());
  Design without = design;
  without.extras[1].card.caliper = Length::mm(0.2);
  EXPECT_GT(roundOf(flat), roundOf(built(without)) + 1);

  // The band passes it on its way, wherever it comes to rest.
  design.extras = {extraOf("label", design), extraOf("belly-band", design)};
  design.extras[0].host = kOnBox;
  design.extras[0].parameters.setCount("hold", 2);
  EXPECT_TRUE(tells(built(design), ProblemCode::ExtraOverFoam));
  design.extras[0] = extraOf("made-bow", design);
  design.extras[0].host = kOnBox;
  const BuiltDesign bow = built(design);
  EXPECT_TRUE(tells(bow, ProblemCode::ExtraOverBow));
  EXPECT_TRUE(piecesOf(bow, 1).empty());
}

// Judged by the room of each: of two that reach from wall to wall only one is made.
TEST(Sliding, OnlyOneInsertFillsTheBox) {
  for (const char* first : {"platform", "partition"})
    for (const char* second : {"platform", "partition"}) {
      Design design = slidingDesign("two-piece-box", "box:60x35x40mm");
      design.parameters.set("length", Length::mm(100));
      design.parameters.set("width", Length::mm(80));
      design.extras = {extraOf(first, design), extraOf(second, design)};
      const BuiltDesign whole = built(design);
      EXPECT_FALSE(piecesOf(whole, 0).empty()) << first;
      EXPECT_TRUE(piecesOf(whole, 1).empty()) << first << ' ' << second;
      ASSERT_EQ(whole.problems.size(), 1U) << first << ' ' << second;
      EXPECT_EQ(whole.problems[0].code, ProblemCode::ExtraRoomTaken);
      EXPECT_EQ(whole.problems[0].where, second);
      EXPECT_EQ(std::get<std::string>(whole.problems[0].values[0]), first);
    }
}

TEST(Sliding, WhatGoesTheSameWayRoundOverAnotherIsTold) {
  Design design = slidingDesign();
  design.extras = {extraOf("ribbon", design), extraOf("ribbon", design)};
  const BuiltDesign twice = built(design);
  ASSERT_TRUE(tells(twice, ProblemCode::ExtraUnderRound));
  EXPECT_TRUE(onlyWarnings(twice.problems));
  design.extras[1].parameters.set("width", Length::mm(6));
  EXPECT_FALSE(tells(built(design), ProblemCode::ExtraUnderRound));
  // A band that is no wider than the ribbon along it.
  Design ball = slidingDesign("petal-prism-box", "sphere:60mm");
  ball.extras = {extraOf("ribbon", ball), extraOf("belly-band", ball)};
  ball.extras[0].parameters.setCount("cross", 0);
  ball.extras[1].parameters.set("width", Length::mm(15));
  const BuiltDesign hidden = built(ball);
  ASSERT_FALSE(piecesOf(hidden, 1).empty());
  ASSERT_NE(toldOf(hidden, "belly-band"), nullptr);
  EXPECT_EQ(toldOf(hidden, "belly-band")->code, ProblemCode::ExtraUnderRound);
}

TEST(Sliding, ALabelOnALabelOnABandIsNotToldToLieUnderThatBand) {
  Design design = slidingDesign("framed-tray", "box:89x64x25mm");
  design.extras = {extraOf("belly-band", design), extraOf("label", design),
                   extraOf("label", design)};
  design.extras[0].parameters.setCount("full", 1);
  design.extras[1].host = 0;
  design.extras[1].parameters.set("width", Length::mm(50));
  design.extras[1].parameters.set("height", Length::mm(50));
  design.extras[2].host = 1;
  design.extras[2].parameters.set("width", Length::mm(28));
  design.extras[2].parameters.set("height", Length::mm(10));
  for (const int extra : {1, 2})
    design.extras[static_cast<std::size_t>(extra)].parameters.setCount("mat", 0);
  const BuiltDesign whole = built(design);
  EXPECT_TRUE(whole.problems.empty());
  EXPECT_FALSE(piecesOf(whole, 2).empty());
}

// A ribbon is drawn as wide as it is, and refused where it is wider than the box.
TEST(Sliding, ARibbonIsDrawnAsWideAsItIs) {
  Design design = slidingDesign();
  design.extras = {extraOf("ribbon", design)};
  Parameters& ribbon = design.extras[0].parameters;
  ribbon.setCount("cross", 0);
  for (const double width : {12.0, 30.0, 50.0}) {
    ribbon.set("width", Length::mm(width));
    const BuiltDesign whole = built(design);
    ASSERT_EQ(whole.ribbons.size(), 1U) << width;
    Net net;
    Pose pose;
    addRibbon(whole.ribbons[0], 0.5, net, pose);
    const Point3 axis = whole.ribbons[0].round.axes.at(whole.ribbons[0].ways[0].axis);
    double low = 1e9;
    double high = -1e9;
    for (std::size_t i = 0; i < net.panels.size(); ++i)
      for (const Point& p : net.panels[i].outline) {
        low = std::min(low, dot(pose[i].apply(p), axis));
        high = std::max(high, dot(pose[i].apply(p), axis));
      }
    EXPECT_NEAR(high - low, width, 1e-6);
  }
  ribbon.set("width", Length::mm(80));
  const BuiltDesign wide = built(design);
  EXPECT_TRUE(wide.ribbons.empty());
  ASSERT_NE(toldOf(wide, "ribbon"), nullptr);
  EXPECT_EQ(toldOf(wide, "ribbon")->code, ProblemCode::ExtraTooLarge);
  ribbon.set("width", std::get<Length>(toldOf(wide, "ribbon")->values[1]));
  EXPECT_EQ(built(design).ribbons.size(), 1U);
}

}  // namespace
}  // namespace creasewright
