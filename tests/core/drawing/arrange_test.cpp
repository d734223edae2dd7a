#include "drawing/arrange.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

const Bounds kWindow{{0, 0}, {10, 10}};

TEST(Arrange, LinesEndExactlyOnTheWindow) {
  const std::vector<Polyline> parts = clippedLine({{-5, 5}, {15, 5}}, kWindow);
  ASSERT_EQ(parts.size(), 1U);
  EXPECT_EQ(parts[0], (Polyline{{0, 5}, {10, 5}}));
}

TEST(Arrange, ALineThatLeavesAndComesBackGivesTwoParts) {
  const std::vector<Polyline> parts = clippedLine({{2, 2}, {12, 2}, {12, 8}, {2, 8}}, kWindow);
  ASSERT_EQ(parts.size(), 2U);
  EXPECT_EQ(parts[0], (Polyline{{2, 2}, {10, 2}}));
  EXPECT_EQ(parts[1], (Polyline{{10, 8}, {2, 8}}));
}

TEST(Arrange, LinesOnTheBorderStay) {
  EXPECT_EQ(clippedLine({{0, 0}, {0, 10}}, kWindow).size(), 1U);
  EXPECT_TRUE(clippedLine({{-1, 0}, {-1, 10}}, kWindow).empty());
}

TEST(Arrange, ClosedOutlinesStayClosedOnlyWhenWhole) {
  Drawing drawing{30, 30, {}, {}};
  drawing.paths.push_back({.role = Role::Cut,
                           .rings = {{{1, 1}, {4, 1}, {4, 4}}, {{5, 5}, {15, 5}, {5, 8}}},
                           .closed = true});
  const Drawing part = clipped(drawing, kWindow);
  ASSERT_EQ(part.paths.size(), 2U);
  EXPECT_TRUE(part.paths[0].closed);
  EXPECT_FALSE(part.paths[1].closed);
}

TEST(Arrange, TurningFourTimesGivesTheSamePlace) {
  Drawing drawing{30, 20, {}, {}};
  drawing.paths.push_back({.role = Role::Cut, .rings = {{{1, 2}, {30, 20}}}});
  drawing.texts.push_back({.label = Label::plain("a"), .at = {3, 4}});
  const Drawing once = turnedLeft(drawing);
  EXPECT_EQ(once.width, 20);
  EXPECT_EQ(once.paths[0].rings[0][0], (Point{18, 1}));
  const Drawing round = turnedLeft(turnedLeft(turnedLeft(once)));
  EXPECT_EQ(round.paths[0].rings[0], drawing.paths[0].rings[0]);
  EXPECT_EQ(round.texts[0].at, drawing.texts[0].at);
  EXPECT_EQ(round.texts[0].turnDegrees, 360);
}

TEST(Arrange, TextBoxFollowsAnchorAndTurn) {
  TextItem text{.label = Label::plain("abcd"), .at = {10, 10}, .height = 5};
  text.anchor = Anchor::Right;
  const Bounds level = bounds(textBox(text, "abcd"));
  EXPECT_NEAR(level.high.x, 10, 1e-9);
  EXPECT_NEAR(level.low.x, 10 - 4 * 0.62 * 5, 1e-9);
  text.turnDegrees = 90;
  const Bounds upright = bounds(textBox(text, "abcd"));
  EXPECT_NEAR(upright.high.y, 10, 1e-9);
  EXPECT_NEAR(upright.low.y, 10 - 4 * 0.62 * 5, 1e-9);
}

}  // namespace
}  // namespace creasewright
