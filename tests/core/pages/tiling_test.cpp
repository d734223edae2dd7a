#include "pages/tiling.h"

#include <cmath>

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

PageSetup setupFor(const char* paper) { return {.paper = *findPaper(paper)}; }

TEST(Tiling, ASmallBlankTakesOnePage) {
  const Tiling tiling = *planTiles(150, 200, setupFor("a4"), 20);
  EXPECT_EQ(tiling.tiles.size(), 1U);
  EXPECT_FALSE(tiling.turned);
}

TEST(Tiling, WindowsCoverTheBlankAndShareTheOverlap) {
  testing::Random random(3);
  for (int round = 0; round < 200; ++round) {
    const double width = random.between(20, 900);
    const double height = random.between(20, 900);
    const Result<Tiling> planned =
        planTiles(width, height, setupFor(random.whole(0, 1) == 0 ? "a4" : "letter"), 20);
    ASSERT_TRUE(planned.ok());
    const double w = planned->turned ? height : width;
    const double h = planned->turned ? width : height;
    for (int probe = 0; probe < 50; ++probe) {
      const Point p{random.between(0, w), random.between(0, h)};
      bool covered = false;
      for (const Tile& tile : planned->tiles) {
        covered = covered || (p.x >= tile.window.low.x && p.x <= tile.window.high.x &&
                              p.y >= tile.window.low.y && p.y <= tile.window.high.y);
      }
      EXPECT_TRUE(covered) << width << " x " << height;
    }
    for (const Tile& a : planned->tiles) {
      for (const Tile& b : planned->tiles) {
        if (b.row == a.row && b.column == a.column + 1) {
          EXPECT_NEAR(a.window.high.x - b.window.low.x, 10, 1e-9);
        }
        if (b.column == a.column && b.row == a.row + 1) {
          EXPECT_NEAR(b.window.high.y - a.window.low.y, 10, 1e-9);
        }
      }
    }
  }
}

TEST(Tiling, NoOrientationNeedsFewerTiles) {
  testing::Random random(4);
  const PageSetup setup = setupFor("letter");
  for (int round = 0; round < 200; ++round) {
    const double width = random.between(20, 900);
    const double height = random.between(20, 900);
    const std::size_t chosen = planTiles(width, height, setup, 20)->tiles.size();
    for (const bool sideways : {false, true}) {
      const PageFrame frame = pageFrame(setup, sideways, 20);
      for (const bool turned : {false, true}) {
        // Count tiles by laying them out one after the other.
        const auto count = [](double blank, double cell) {
          std::size_t tiles = 1;
          for (double reach = cell; reach < blank - 1e-6; reach += cell - 10) ++tiles;
          return tiles;
        };
        EXPECT_LE(chosen, count(turned ? height : width, frame.cell.width()) *
                              count(turned ? width : height, frame.cell.height()));
      }
    }
  }
}

TEST(Tiling, RefusesMoreThanAHundredTiles) {
  const Result<Tiling> planned = planTiles(5000, 5000, setupFor("a4"), 20);
  ASSERT_FALSE(planned.ok());
  EXPECT_EQ(planned.problem().code, ProblemCode::TooManyTiles);
}

TEST(Tiling, ColumnsAreNamedLikeASheetOfFigures) {
  EXPECT_EQ(columnName(0), "A");
  EXPECT_EQ(columnName(25), "Z");
  EXPECT_EQ(columnName(26), "AA");
  EXPECT_EQ(columnName(27), "AB");
}

}  // namespace
}  // namespace creasewright
