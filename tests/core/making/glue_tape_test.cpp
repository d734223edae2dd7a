#include "making/glue_tape.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

GlueStrip stripFor(const Polygon& area, ToolGrid grid) {
  GlueArea glue;
  glue.area = area;
  return planAdhesive({}, {glue}, {}, grid).strips.front();
}

Polygon box(double width, double height) {
  return {{0, 0}, {width, 0}, {width, height}, {0, height}};
}

// Tape widths: common practice, no published source.
TEST(GlueTape, TakesTheWidestTapeThatFits) {
  EXPECT_EQ(stripFor(box(80, 13), ToolGrid::millimetre()).width, Length::mm(12));
  EXPECT_EQ(stripFor(box(80, 11.9), ToolGrid::millimetre()).width, Length::mm(9));
  EXPECT_EQ(stripFor(box(80, 3), ToolGrid::none()).width, Length::mm(3));
  EXPECT_EQ(stripFor(box(80, 7.525), ToolGrid::sixteenthInch()).width, Length::inches(1, 4));
}

TEST(GlueTape, NarrowOrShortAreasTakeLiquidGlue) {
  EXPECT_TRUE(stripFor(box(80, 2.9), ToolGrid::millimetre()).liquid());
  EXPECT_TRUE(stripFor(box(2.5, 2.5), ToolGrid::millimetre()).liquid());
}

TEST(GlueTape, TheTapeStaysInsideATaperedArea) {
  const Polygon tapered{{0, 0}, {80, 0}, {70, 10}, {10, 10}};
  const GlueStrip strip = stripFor(tapered, ToolGrid::millimetre());
  ASSERT_EQ(strip.width, Length::mm(9));
  const Point half = turnLeft(unit(strip.middle.b - strip.middle.a)) * 4.5;
  for (const Point end : {strip.middle.a, strip.middle.b})
    for (const Point corner : {end + half, end - half})
      EXPECT_NE(locate(corner, tapered, 0.05), Side::Outside);
}

TEST(GlueTape, AddsUpTheLength) {
  GlueArea glue;
  glue.area = box(80, 7);
  const AdhesivePlan plan = planAdhesive({}, {glue, glue}, {}, ToolGrid::millimetre());
  ASSERT_EQ(plan.tapes.size(), 1U);
  EXPECT_EQ(plan.tapes[0].strips, 2);
  EXPECT_NEAR(plan.tapes[0].length.mm(), 160, 1e-5);
}

}  // namespace
}  // namespace creasewright
