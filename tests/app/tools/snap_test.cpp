#include "tools/snap.h"

#include <cmath>

#include <gtest/gtest.h>

#include "document/build.h"
#include "support/random.h"

namespace creasewright {
namespace {

BuiltDesign tray() {
  return *build(*newDesign("framed-tray", *parseProduct("box:105x32x22mm"), *findCard("300gsm"),
                           Ease::Easy, ToolGrid::millimetre()));
}

TEST(Snap, CornersComeBeforeMiddlesBeforeLinesBeforeTheGrid) {
  const BuiltDesign built = tray();
  const BuiltPiece& piece = built.pieces.front();
  const Segment fold = piece.flat.creases.front();
  const Point along = unit(fold.b - fold.a);
  const Point across = turnLeft(along);
  const Snap end = snapAt(piece, fold.a + along * 0.4, 1, ToolGrid::none());
  EXPECT_EQ(end.kind, SnapKind::Corner);
  EXPECT_LT(distance(end.at, fold.a), 1e-9);
  const Point middle = (fold.a + fold.b) / 2;
  const Snap half = snapAt(piece, middle + across * 0.3, 1, ToolGrid::none());
  EXPECT_EQ(half.kind, SnapKind::Middle);
  EXPECT_LT(distance(half.at, middle), 1e-9);
  const Snap on =
      snapAt(piece, fold.a + along * (length(fold) * 0.3) + across * 0.3, 1, ToolGrid::none());
  EXPECT_EQ(on.kind, SnapKind::Line);
  EXPECT_LT(distanceToSegment(on.at, fold), 1e-9);
}

// Law: nothing is caught from farther than the reach; what is said to be on a line or the grid is.
TEST(Snap, WhatIsCaughtIsNearAndWhatItIsSaidToBe) {
  testing::Random random(4141);
  const BuiltDesign built = tray();
  const BuiltPiece& piece = built.pieces.front();
  int kinds[6] = {};
  for (int i = 0; i < 9000; ++i) {
    const Point at{random.between(-5, piece.flat.width + 5),
                   random.between(-5, piece.flat.height + 5)};
    const Snap snap = snapAt(piece, at, 0.6, ToolGrid::millimetre());
    ++kinds[static_cast<int>(snap.kind)];
    EXPECT_LE(distance(at, snap.at), 0.6 + 1e-9);
    if (snap.kind == SnapKind::Nothing) {
      EXPECT_EQ(snap.at, at);
    }
    if (snap.kind == SnapKind::Line) {
      EXPECT_LT(distanceToSegment(snap.at, *snap.line), 1e-9);
    }
    if (snap.kind == SnapKind::Grid) {
      EXPECT_NEAR(snap.at.x, std::round(snap.at.x), 1e-9);
      EXPECT_NEAR(snap.at.y, std::round(snap.at.y), 1e-9);
    }
  }
  for (const SnapKind kind : {SnapKind::Corner, SnapKind::Line, SnapKind::Grid, SnapKind::Nothing})
    EXPECT_GT(kinds[static_cast<int>(kind)], 0) << static_cast<int>(kind);
}

TEST(Measure, PointsLinesAndAngles) {
  const Snap origin{{0, 0}, SnapKind::Corner, {}};
  const Snap point{{30, 40}, SnapKind::Grid, {}};
  EXPECT_NEAR(measureBetween(origin, point).distance, 50, 1e-9);
  const Snap level{{10, 20}, SnapKind::Line, Segment{{0, 20}, {60, 20}}};
  EXPECT_NEAR(measureBetween(point, level).distance, 20, 1e-9) << "square to the line";
  EXPECT_NEAR(measureBetween(level, point).distance, 20, 1e-9);
  const Snap other{{50, 27}, SnapKind::Line, Segment{{60, 27}, {5, 27}}};
  EXPECT_NEAR(measureBetween(level, other).distance, 7, 1e-9) << "between lines that run alike";
  const Snap slanting{{5, 5}, SnapKind::Line, Segment{{0, 0}, {10, 10}}};
  ASSERT_TRUE(measureBetween(level, slanting).degrees);
  EXPECT_NEAR(*measureBetween(level, slanting).degrees, 45, 1e-9);
}

}  // namespace
}  // namespace creasewright
