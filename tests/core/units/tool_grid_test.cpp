#include "units/tool_grid.h"

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

const ToolGrid kGrids[] = {ToolGrid::eighthInch(), ToolGrid::sixteenthInch(),
                           ToolGrid::millimetre()};

TEST(ToolGrid, RoundsExactlyOnBothSidesOfZero) {
  const ToolGrid grid = ToolGrid::sixteenthInch();  // 1 587 500 nm
  EXPECT_EQ(grid.roundUp(Length::nanometres(1)).nm(), 1'587'500);
  EXPECT_EQ(grid.roundUp(Length::nanometres(1'587'500)).nm(), 1'587'500);
  EXPECT_EQ(grid.roundUp(Length::nanometres(1'587'501)).nm(), 3'175'000);
  EXPECT_EQ(grid.roundUp(Length::nanometres(-1)).nm(), 0);
  EXPECT_EQ(grid.roundUp(Length::nanometres(-1'587'501)).nm(), -1'587'500);
  EXPECT_EQ(grid.roundDown(Length::nanometres(1'587'499)).nm(), 0);
  EXPECT_EQ(grid.roundDown(Length::nanometres(-1)).nm(), -1'587'500);
  EXPECT_EQ(grid.roundDown(Length::nanometres(-1'587'500)).nm(), -1'587'500);
  EXPECT_EQ(grid.nearest(Length::nanometres(793'749)).nm(), 0);
  EXPECT_EQ(grid.nearest(Length::nanometres(793'751)).nm(), 1'587'500);
  EXPECT_EQ(grid.nearest(Length::nanometres(-793'751)).nm(), -1'587'500);
  EXPECT_EQ(grid.nearest(Length()).nm(), 0);
}

TEST(ToolGrid, LawsOfRounding) {
  testing::Random random(1601);
  for (const ToolGrid grid : kGrids) {
    const std::int64_t step = grid.step().nm();
    for (int i = 0; i < 5000; ++i) {
      const Length length = Length::mm(random.between(-600, 600));
      const Length up = grid.roundUp(length);
      const Length down = grid.roundDown(length);
      const Length near = grid.nearest(length);
      EXPECT_EQ(up.nm() % step, 0);
      EXPECT_EQ(down.nm() % step, 0);
      EXPECT_GE(up, length);
      EXPECT_LT((up - length).nm(), step);
      EXPECT_LE(down, length);
      EXPECT_LT((length - down).nm(), step);
      EXPECT_TRUE(near == up || near == down);
      EXPECT_LE(std::abs((near - length).nm()) * 2, step);
    }
  }
}

TEST(ToolGrid, NoneKeepsEveryLength) {
  const Length odd = Length::nanometres(-1'234'567);
  EXPECT_EQ(ToolGrid::none().roundUp(odd), odd);
  EXPECT_EQ(ToolGrid::none().roundDown(odd), odd);
  EXPECT_EQ(ToolGrid::none().nearest(odd), odd);
  EXPECT_TRUE(ToolGrid::none().holds(odd, {}));
}

TEST(ToolGrid, HoldsWithinTheTolerance) {
  const ToolGrid grid = ToolGrid::millimetre();
  EXPECT_TRUE(grid.holds(Length::nanometres(5'001'000)));
  EXPECT_TRUE(grid.holds(Length::nanometres(-4'999'000)));
  EXPECT_FALSE(grid.holds(Length::nanometres(5'001'001)));
  EXPECT_FALSE(grid.holds(Length::nanometres(5'000'001), {}));
  EXPECT_TRUE(ToolGrid::eighthInch().holds(Length::inches(-3, 8), {}));
}

TEST(ToolGrid, TextsRoundTrip) {
  for (const char* text : {"1/8in", "1/16in", "1mm", "none"}) {
    const Result<ToolGrid> grid = parseToolGrid(text);
    ASSERT_TRUE(grid.ok()) << text;
    EXPECT_EQ(toolGridText(*grid), text);
  }
  EXPECT_EQ(parseToolGrid("1/16 in")->step(), Length::inches(1, 16));
  EXPECT_EQ(toolGridText(ToolGrid(Length::mm(7))), "");
}

TEST(ToolGrid, RefusesOtherTexts) {
  for (const char* text : {"", "1/8", "2mm", "None", "1/8in1", "1"}) {
    const Result<ToolGrid> grid = parseToolGrid(text);
    ASSERT_FALSE(grid.ok()) << text;
    EXPECT_EQ(grid.problem(), (Problem{ProblemCode::GridUnknown, {}, {std::string(text)}}));
  }
}

}  // namespace
}  // namespace creasewright
