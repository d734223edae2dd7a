#include "pages/score_strips.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "pages/strip_pages.h"

namespace creasewright {
namespace {

std::string codeStart(const Label& label) {
  return label.code.empty() ? label.literal : label.code.substr(0, 12);
}

/// Where a point of a side lies from the side's left end, when the sheet, inside up, is turned so
/// that the side lies to the maker: counter-clockwise round the sheet.
double along(SheetSide side, Point p, double width, double height) {
  if (side == SheetSide::Bottom) return p.x;
  if (side == SheetSide::Right) return p.y;
  return side == SheetSide::Top ? width - p.x : height - p.y;
}

/// Every straight score of the net that is parallel to a side and not among the free ones is hit by
/// a tick of a strip, exactly at its place, and no full tick stands where the net has no line.
TEST(ScoreStrips, TicksStandWhereTheNetHasItsScores) {
  using enum SheetSide;
  int judged = 0;
  int ticks = 0;
  for (const Style& style : styles()) {
    const auto built = build(testing::asItComes(style));
    ASSERT_TRUE(built) << style.id;
    for (const BuiltPiece& piece : built->pieces) {
      const double w = piece.flat.width;
      const double h = piece.flat.height;
      const std::vector<ScoreStrip> strips = scoreStrips(piece.scorePlan, w, h);
      const auto hit = [&](SheetSide side, double at) {
        return std::ranges::any_of(strips, [&](const ScoreStrip& strip) {
          return std::ranges::find(strip.sides, side) != strip.sides.end() &&
                 std::ranges::any_of(strip.ticks, [at](const StripTick& tick) {
                   return std::abs(tick.at - at) < 0.02;
                 });
        });
      };
      for (std::size_t i = 0; i < piece.flat.creases.size(); ++i) {
        if (piece.net.creases[i].kind != CreaseKind::Score) continue;
        const Segment& score = piece.flat.creases[i];
        const bool free =
            std::ranges::any_of(piece.scorePlan.freeScores, [&](const FreeScore& each) {
              return distanceToSegment((score.a + score.b) / 2, each.line) < 0.05;
            });
        if (free) continue;
        const bool upright = std::abs(score.a.x - score.b.x) < 0.01;
        if (!upright && std::abs(score.a.y - score.b.y) >= 0.01) continue;
        ++judged;
        const Point p = score.a;
        EXPECT_TRUE(upright ? hit(Bottom, along(Bottom, p, w, h)) || hit(Top, along(Top, p, w, h))
                            : hit(Left, along(Left, p, w, h)) || hit(Right, along(Right, p, w, h)))
            << style.id << ' ' << piece.name << " at " << p.x << ", " << p.y;
      }
      for (const ScoreStrip& strip : strips)
        for (const StripTick& tick : strip.ticks) {
          ++ticks;
          if (tick.reading.purpose != ScorePurpose::Fold) continue;
          const SheetSide side = strip.sides.front();
          const bool upright = side == Bottom || side == Top;
          EXPECT_NEAR(strip.length, upright ? w : h, 1e-9);
          EXPECT_TRUE(std::ranges::any_of(
              piece.flat.creases,
              [&](const Segment& score) {
                const bool parallel = upright ? std::abs(score.a.x - score.b.x) < 0.02
                                              : std::abs(score.a.y - score.b.y) < 0.02;
                return parallel && std::abs(along(side, score.a, w, h) - tick.at) < 0.02;
              }))
              << style.id << ' ' << piece.name << ' ' << tick.at;
        }
    }
  }
  EXPECT_GT(judged, 200);
  EXPECT_GT(ticks, 200);
}

/// A square tray that is scored alike from all sides has one strip; an oblong one has two.
TEST(ScoreStrips, AlikeSidesShareAStrip) {
  ScoreReading reading;
  reading.at = Length::mm(30);
  ScorePlan plan;
  using enum SheetSide;
  plan.setups.push_back({{Left, Right, Bottom, Top}, {reading}});
  const std::vector<ScoreStrip> square = scoreStrips(plan, 200, 200);
  ASSERT_EQ(square.size(), 1U);
  EXPECT_EQ(square[0].sides.size(), 4U);
  ASSERT_EQ(square[0].ticks.size(), 2U);
  EXPECT_NEAR(square[0].ticks[0].at, 30, 1e-9);
  EXPECT_FALSE(square[0].ticks[0].fromRight);
  EXPECT_NEAR(square[0].ticks[1].at, 170, 1e-9);
  EXPECT_TRUE(square[0].ticks[1].fromRight);
  EXPECT_EQ(scoreStrips(plan, 250, 200).size(), 2U);
  // Short marks at alike places keep the sides alike, from whichever corner they are told.
  ScoreReading mark;
  mark.run = ScoreRun::Short;
  mark.measuredFrom = Left;
  mark.to = Length::mm(30);
  mark.toLine = 1;
  mark.at = Length::mm(50);
  ScoreReading other = mark;
  other.at = Length::mm(200);
  plan.setups.push_back({{Bottom, Top}, {mark, other}});
  const std::vector<ScoreStrip> oblong = scoreStrips(plan, 250, 200);
  ASSERT_EQ(oblong.size(), 2U);
  EXPECT_EQ(oblong[0].ticks.size(), 4U);
  EXPECT_EQ(oblong[0].sides.size(), 2U);
}

TEST(ScoreStrips, AJointKeepsOffTheTicks) {
  ScoreStrip strip{{SheetSide::Bottom}, 500, {}};
  for (const double at : {198.0, 203.0, 390.0}) strip.ticks.push_back({at, {}, false});
  const std::vector<double> joints = stripJoints(strip, 200);
  double from = 0;
  for (const double joint : joints) {
    EXPECT_LE(joint - from, 200 + 1e-9);
    for (const StripTick& tick : strip.ticks) EXPECT_GE(std::abs(tick.at - joint), 5 - 1e-9);
    from = joint;
  }
  EXPECT_LE(strip.length - from, 200 + 1e-9);
}

/// What is printed: every strip's outline in true size with its ticks from the lower edge at their
/// places, inside the margins.
TEST(ScoreStrips, ArePrintedInTrueSize) {
  int strips = 0;
  for (const Style& style : styles()) {
    const auto built = build(testing::asItComes(style));
    ASSERT_TRUE(built);
    const BuiltPiece& piece = built->pieces.front();
    const TemplatePiece part{.name = "part",
                             .net = &piece.net,
                             .flat = &piece.flat,
                             .scorePlan = &piece.scorePlan,
                             .gluePlan = &piece.gluePlan};
    const auto pages =
        drawScoreStrips({part}, {.paper = *findPaper("a3")}, {"A", "", {}}, codeStart);
    ASSERT_TRUE(pages) << style.id;
    for (const ScoreStrip& strip :
         scoreStrips(piece.scorePlan, piece.flat.width, piece.flat.height)) {
      if (strip.length > 380) continue;  // in parts
      ++strips;
      EXPECT_TRUE(std::ranges::any_of(*pages, [&](const Drawing& page) {
        return std::ranges::any_of(page.paths, [&](const PathItem& border) {
          if (border.role != Role::Cut || !border.closed) return false;
          const Bounds box = bounds(border.rings.front());
          if (std::abs(box.width() - strip.length) > 1e-6) return false;
          EXPECT_GE(box.low.x, 5 - 1e-6);
          EXPECT_LE(box.high.x, page.width - 5 + 1e-6);
          return std::ranges::all_of(strip.ticks, [&](const StripTick& tick) {
            return std::ranges::any_of(page.paths, [&](const PathItem& line) {
              return line.role == Role::Legend && !line.closed &&
                     std::abs(line.rings[0][0].x - box.low.x - tick.at) < 1e-6 &&
                     std::abs(line.rings[0][0].y - box.low.y) < 1e-6 &&
                     std::abs(line.rings[0][1].x - box.low.x - tick.at) < 1e-6;
            });
          });
        });
      })) << style.id;
    }
  }
  EXPECT_GT(strips, 40);
}

}  // namespace
}  // namespace creasewright
