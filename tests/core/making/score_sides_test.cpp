#include "making/score_sides.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

LineView sheet(double width, const std::vector<double>& lines) {
  LineView view;
  view.width = width;
  view.height = 100;
  for (const double at : lines) view.lines.push_back({at, {{0, 100}}, {}, true});
  return view;
}

TEST(ScoreSides, OneReadingOnTheGridDoesNotPartAMirroredPair) {
  // 10.5 mm from the left is 90 mm from the right, but 20.25 mm stays off the grid from either.
  const auto setups = chooseSides(sheet(100.5, {10.5, 20.25, 80.25, 90}), ToolGrid::millimetre());
  ASSERT_EQ(setups.size(), 1U);
  EXPECT_EQ(setups[0].sides.size(), 2U);
  EXPECT_EQ(setups[0].readings.size(), 2U);
}

TEST(ScoreSides, APairIsPartedWhenThatBringsAllReadingsOntoTheGrid) {
  const auto setups = chooseSides(sheet(100.5, {10.5, 90}), ToolGrid::millimetre());
  for (const ScoreSetup& setup : setups)
    for (const ScoreReading& reading : setup.readings)
      EXPECT_TRUE(ToolGrid::millimetre().holds(reading.at));
}

TEST(ScoreSides, ReadingsLongerThanTheBoardComeFromTheOppositeSide) {
  const LineView view = sheet(400, {50, 320});
  EXPECT_EQ(chooseSides(view, ToolGrid::millimetre()).size(), 1U);
  const auto setups = chooseSides(view, ToolGrid::millimetre(), Length::inches(12));
  ASSERT_EQ(setups.size(), 2U);
  EXPECT_EQ(setups[0].readings[0].at, Length::mm(50));
  EXPECT_EQ(setups[1].sides, std::vector{SheetSide::Right});
  EXPECT_EQ(setups[1].readings[0].at, Length::mm(80));
}

}  // namespace
}  // namespace creasewright
