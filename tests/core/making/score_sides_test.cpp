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

std::vector<ScoreSetup> sides(LineView upright, ToolGrid grid, Length board = {}) {
  LineView level;
  level.swapped = true;
  level.width = upright.height;
  level.height = upright.width;
  return chooseSides({std::move(upright), std::move(level)}, grid, board);
}

TEST(ScoreSides, OneReadingOnTheGridDoesNotPartAMirroredPair) {
  // 10.5 mm from the left is 90 mm from the right, but 20.25 mm stays off the grid from either.
  const auto setups = sides(sheet(100.5, {10.5, 20.25, 80.25, 90}), ToolGrid::millimetre());
  ASSERT_EQ(setups.size(), 1U);
  EXPECT_EQ(setups[0].sides.size(), 2U);
  EXPECT_EQ(setups[0].readings.size(), 2U);
}

TEST(ScoreSides, APairIsPartedWhenThatBringsAllReadingsOntoTheGrid) {
  const auto setups = sides(sheet(100.5, {10.5, 90}), ToolGrid::millimetre());
  for (const ScoreSetup& setup : setups)
    for (const ScoreReading& reading : setup.readings)
      EXPECT_TRUE(ToolGrid::millimetre().holds(reading.at));
}

TEST(ScoreSides, ReadingsLongerThanTheBoardComeFromTheOppositeSide) {
  const LineView view = sheet(400, {50, 320});
  EXPECT_EQ(sides(view, ToolGrid::millimetre()).size(), 1U);
  const auto setups = sides(view, ToolGrid::millimetre(), Length::inches(12));
  ASSERT_EQ(setups.size(), 2U);
  EXPECT_EQ(setups[0].readings[0].at, Length::mm(50));
  EXPECT_EQ(setups[1].sides, std::vector{SheetSide::Right});
  EXPECT_EQ(setups[1].readings[0].at, Length::mm(80));
}

/// The sheet of the framed lid in the trade, on all four sides rather than two with three settings.
TEST(ScoreSides, OneSettingOnAllFourSidesBeatsTwoSidesWithThree) {
  LineView upright = sheet(190.5, {38.1, 152.4});
  LineView level = sheet(152.4, {38.1, 114.3});
  upright.height = 152.4;
  level.height = 190.5;
  level.swapped = true;
  const auto setups = chooseSides({upright, level}, ToolGrid::sixteenthInch());
  ASSERT_EQ(setups.size(), 1U);
  EXPECT_EQ(setups[0].sides.size(), 4U);
  ASSERT_EQ(setups[0].readings.size(), 1U);
  EXPECT_EQ(setups[0].readings[0].at, Length::inches(3, 2));
}

TEST(ScoreSides, WhatAllFourSidesShareIsToldBeforeWhatOneHasMore) {
  LineView upright = sheet(190.5, {38.1, 100, 152.4});
  LineView level = sheet(152.4, {38.1, 114.3});
  level.swapped = true;
  const auto setups = chooseSides({upright, level}, ToolGrid::none());
  ASSERT_EQ(setups.size(), 2U);
  EXPECT_EQ(setups[0].sides.size(), 4U);
  EXPECT_EQ(setups[0].readings.size(), 1U);
  EXPECT_EQ(setups[1].readings.size(), 1U);
}

/// A tube is not worth turning six times to name a setting once.
TEST(ScoreSides, SidesThatShareLittleAreToldOneByOne) {
  LineView upright = sheet(203, {15, 75, 105, 165});
  LineView level = sheet(150, {15, 46});
  level.swapped = true;
  std::size_t turns = 0;
  for (const ScoreSetup& setup : chooseSides({upright, level}, ToolGrid::none()))
    turns += setup.sides.size();
  EXPECT_LE(turns, 3U);
}

}  // namespace
}  // namespace creasewright
