#include "extras/flat_piece.h"

#include <gtest/gtest.h>

#include "extras/ribbon_way.h"

namespace creasewright {
namespace {

std::vector<RibbonWay> crosswise(double length, double width, double height) {
  const auto box = [](double a, double b) {
    return Polygon{{-a / 2, -b / 2}, {a / 2, -b / 2}, {a / 2, b / 2}, {-a / 2, b / 2}};
  };
  return {{0, box(width, height)}, {1, box(height, length)}};
}

// Two ribbon sellers' worked examples.
TEST(Ribbon, ACrossWrapTakesWhatTheSellersSay) {
  const double inch = 25.4;
  EXPECT_NEAR(ribbonRound(crosswise(11.5 * inch, 5.5 * inch, 4 * inch)), 50 * inch, 1e-9);
  EXPECT_NEAR(ribbonRound(crosswise(300, 200, 100)) + 240, 1640, 1e-9);
}

TEST(FlatPiece, ScallopsFillTheirSizeAndDoNotCross) {
  for (const double width : {20.0, 55.0, 120.0}) {
    const Polygon outline = scallop(width, 40, 8);
    EXPECT_TRUE(isSimple(outline)) << width;
    EXPECT_NEAR(bounds(outline).width(), width, 1e-9);
    EXPECT_NEAR(bounds(outline).height(), 40, 1e-9);
    EXPECT_GT(signedArea(outline), 0);
  }
}

TEST(FlatPiece, RoundedCornersTakeOffWhatAQuarterCircleLeaves) {
  const Polygon outline = roundedRectangle(60, 40, 10);
  const double quarter = 100 - 3.14159265358979 * 100 / 4;
  // Chords lie at most 0.05 mm inside an arc of 62.8 mm: two thirds of that times its length.
  EXPECT_NEAR(signedArea(outline), 2400 - 4 * quarter, 2.1);
  EXPECT_LE(signedArea(outline), 2400 - 4 * quarter);
  EXPECT_EQ(roundedRectangle(60, 40, 0).size(), 4U);
}

TEST(FlatPiece, StepsOfPunchesFollowTheGrid) {
  EXPECT_EQ(wholeSteps(61, ToolGrid::sixteenthInch()), Length::inches(9, 4));
  EXPECT_EQ(wholeSteps(61, ToolGrid::millimetre()), Length::nanometres(60'000'000));
}

}  // namespace
}  // namespace creasewright
