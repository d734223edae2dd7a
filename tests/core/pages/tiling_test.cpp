#include "pages/tiling.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "pages/joints.h"
#include "pages/page_frame.h"
#include "support/random.h"

namespace creasewright {
namespace {

constexpr double kOverlap = 10;

Polygon box(double width, double height) {
  return {{0, 0}, {width, 0}, {width, height}, {0, height}};
}

TiledSheet plain(double width, double height) {
  return {width, height, region(box(width, height)), {}};
}

/// The printable area of a paper, both ways, with the usual margin.
std::vector<TileCell> cellsOf(const char* paper) {
  std::vector<TileCell> cells;
  for (const bool sideways : {false, true}) {
    const PageFrame frame = pageFrame({.paper = *findPaper(paper)}, sideways, {});
    cells.push_back({sideways, frame.cell.width(), frame.cell.height()});
  }
  return cells;
}

TEST(Tiling, ASmallBlankTakesOnePage) {
  const auto tiling = planTiles(plain(150, 200), cellsOf("a4"), kOverlap, JointRule::FirstFull);
  ASSERT_TRUE(tiling);
  EXPECT_EQ(tiling->tiles.size(), 1U);
  EXPECT_FALSE(tiling->turned);
}

/// 2 x 200 - 10 = 390 mm are enough for 300, and 287 for 280.
TEST(Tiling, ABlankOf300By280TakesTwoPagesOfA4) {
  for (const JointRule rule : {JointRule::FirstFull, JointRule::Even}) {
    const auto tiling = planTiles(plain(300, 280), cellsOf("a4"), kOverlap, rule);
    ASSERT_TRUE(tiling);
    EXPECT_EQ(tiling->tiles.size(), 2U);
  }
}

TEST(Tiling, WindowsCoverTheBlankShareTheOverlapAndFitThePage) {
  testing::Random random(3);
  for (int round = 0; round < 200; ++round) {
    const TiledSheet sheet = plain(random.between(20, 900), random.between(20, 900));
    const auto cells = cellsOf(random.whole(0, 1) == 0 ? "a4" : "letter");
    const auto rule = random.whole(0, 1) == 0 ? JointRule::FirstFull : JointRule::Even;
    const auto planned = planTiles(sheet, cells, kOverlap, rule);
    ASSERT_TRUE(planned);
    const double w = planned->turned ? sheet.height : sheet.width;
    const double h = planned->turned ? sheet.width : sheet.height;
    double own = 0;
    for (const Tile& tile : planned->tiles) {
      own += tile.own.width() * tile.own.height();
      const TileCell& cell = cells[planned->sideways ? 1 : 0];
      EXPECT_LE(tile.window.width(), cell.width + 1e-6);
      EXPECT_LE(tile.window.height(), cell.height + 1e-6);
      EXPECT_GE(tile.window.low.x, -1e-9);
      EXPECT_GE(tile.window.low.y, -1e-9);
      EXPECT_LE(tile.window.high.x, w + 1e-9);
      EXPECT_LE(tile.window.high.y, h + 1e-9);
    }
    EXPECT_NEAR(own, w * h, 1e-6 * w * h);
    for (const Tile& a : planned->tiles)
      for (const Tile& b : planned->tiles) {
        if (b.row == a.row && b.column == a.column + 1) {
          EXPECT_NEAR(a.own.high.x, b.own.low.x, 1e-9);
          EXPECT_NEAR(a.window.high.x - b.window.low.x, kOverlap, 1e-9);
        }
        if (b.column == a.column && b.row == a.row + 1) {
          EXPECT_NEAR(b.own.high.y, a.own.low.y, 1e-9);
          EXPECT_NEAR(b.window.high.y - a.window.low.y, kOverlap, 1e-9);
        }
      }
  }
}

TEST(Tiling, NoOrientationNeedsFewerTiles) {
  testing::Random random(4);
  for (int round = 0; round < 200; ++round) {
    const double width = random.between(20, 900);
    const double height = random.between(20, 900);
    const auto cells = cellsOf("letter");
    const std::size_t chosen =
        planTiles(plain(width, height), cells, kOverlap, JointRule::FirstFull)->tiles.size();
    for (const TileCell& cell : cells)
      for (const bool turned : {false, true}) {
        // Count tiles by laying them out one after the other.
        const auto count = [](double blank, double side) {
          std::size_t tiles = 1;
          for (double reach = side; reach < blank - 1e-6; reach += side - kOverlap) ++tiles;
          return tiles;
        };
        EXPECT_LE(chosen, count(turned ? height : width, cell.width) *
                              count(turned ? width : height, cell.height));
      }
  }
}

/// Where two tiles do, no joint on a grid of half a millimetre cuts through less card, over every
/// style: on a score or in waste where there is one.
TEST(Tiling, AJointCutsThroughAsLittleCardAsAny) {
  int judged = 0;
  int free = 0;
  for (const Style& style : styles()) {
    const auto built = build(testing::withItsExtras(style));
    if (!built) continue;
    for (const BuiltPiece& piece : built->pieces) {
      TiledSheet sheet{piece.flat.width, piece.flat.height, piece.flat.outline, {}};
      for (std::size_t i = 0; i < piece.flat.creases.size(); ++i)
        if (piece.net.creases[i].kind != CreaseKind::Flat)
          sheet.scores.push_back(piece.flat.creases[i]);
      const double cell = 0.7 * sheet.width;
      if (cell <= 2 * kOverlap) continue;
      const Joints joints = chooseJoints(sheet, true, 2, cell, kOverlap, JointRule::FirstFull);
      ASSERT_EQ(joints.places.size(), 1U) << style.id;
      ++judged;
      const double from = sheet.width - cell + kOverlap / 2;
      const double to = cell - kOverlap / 2;
      EXPECT_GE(joints.places[0], from - 1e-6);
      EXPECT_LE(joints.places[0], to + 1e-6);
      for (double x = from; x <= to; x += 0.5) {
        // The wish for a full first tile, and 2 mm between the places on slanting edges.
        EXPECT_LE(joints.crossed, cardCrossed(sheet, true, x) + 0.02 * cell + 8)
            << style.id << ' ' << piece.name << " at " << x;
      }
      if (joints.crossed < 0.5) ++free;
    }
  }
  EXPECT_GT(judged, 60);
  EXPECT_GT(free, 15);
}

/// A cross of card in the middle of three by three tiles: the corners hold none.
TEST(Tiling, TilesWithoutCardAreNotPrinted) {
  TiledSheet sheet = plain(500, 500);
  sheet.card = unite(
      {{{200, 0}, {300, 0}, {300, 500}, {200, 500}}, {{0, 200}, {500, 200}, {500, 300}, {0, 300}}});
  const auto tiling = planTiles(sheet, {{false, 187, 187}}, kOverlap, JointRule::Even);
  ASSERT_TRUE(tiling);
  EXPECT_EQ(tiling->columns * tiling->rows, 9);
  EXPECT_EQ(tiling->tiles.size(), 5U);
  EXPECT_FALSE(tiling->has(0, 0));
  EXPECT_TRUE(tiling->has(1, 0));
}

TEST(Tiling, ACardCrossedIsMeasuredOffScoresAndCuts) {
  TiledSheet sheet = plain(100, 60);
  sheet.scores = {{{40, 0}, {40, 60}}, {{70, 0}, {70, 20}}};
  EXPECT_NEAR(cardCrossed(sheet, true, 50), 60, 1e-9);
  EXPECT_NEAR(cardCrossed(sheet, true, 40), 0, 1e-9);
  EXPECT_NEAR(cardCrossed(sheet, true, 70), 40, 1e-9);
  EXPECT_NEAR(cardCrossed(sheet, true, 100), 0, 1e-9);
  EXPECT_NEAR(cardCrossed(sheet, false, 30), 100, 1e-9);
}

TEST(Tiling, ColumnsAreNamedLikeASheetOfFigures) {
  EXPECT_EQ(columnName(0), "A");
  EXPECT_EQ(columnName(25), "Z");
  EXPECT_EQ(columnName(26), "AA");
  EXPECT_EQ(columnName(27), "AB");
}

}  // namespace
}  // namespace creasewright
