#include <algorithm>
#include <cmath>
#include <set>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "core/making/score_plan_text.h"
#include "making/score_hand.h"

// What the left hand is told makes the same lines as what the right hand is told, and is read from
// the other edge. The lines are carried out here by code that plans nothing.
namespace creasewright::testing {
namespace {

std::vector<Segment> linesOf(const ScorePlan& plan, const FlatNet& flat) {
  std::vector<Segment> lines;
  for (const ScoreSetup& setup : plan.setups)
    for (const ScoreSide& side : placed(setup, flat)) lines.push_back(side.line);
  for (const FreeScore& score : plan.freeScores) lines.push_back(score.line);
  return lines;
}

/// Whether each line of one has its own in the other, whichever end comes first.
bool sameLines(const std::vector<Segment>& a, std::vector<Segment> b) {
  constexpr double kSame = 2e-3;  // mm
  const auto meet = [](Point p, Point q) { return distance(p, q) < kSame; };
  for (const Segment& line : a) {
    const auto found = std::ranges::find_if(b, [&](const Segment& other) {
      return (meet(line.a, other.a) && meet(line.b, other.b)) ||
             (meet(line.a, other.b) && meet(line.b, other.a));
    });
    if (found == b.end()) return false;
    b.erase(found);
  }
  return b.empty();
}

/// Different numbers to which the board is set for full scores.
std::size_t settings(const ScorePlan& plan) {
  std::set<std::int64_t> set;
  for (const ScoreSetup& setup : plan.setups)
    for (const ScoreReading& reading : setup.readings)
      if (reading.run == ScoreRun::Full) set.insert(reading.at.nm() / 10'000);
  return set.size();
}

/// Readings told for the sides of full scores: a setup of two sides counts once.
std::size_t readings(const ScorePlan& plan, ScoreRun run) {
  std::size_t count = 0;
  for (const ScoreSetup& setup : plan.setups)
    count += static_cast<std::size_t>(std::ranges::count(setup.readings, run, &ScoreReading::run));
  return count;
}

struct FromEdge {
  std::set<std::int64_t> left;  ///< nm
  std::set<std::int64_t> right;
};

/// Numbers of full scores that are read from the left or the right edge.
FromEdge fromEdges(const ScorePlan& plan) {
  FromEdge out;
  for (const ScoreSetup& setup : plan.setups)
    for (const SheetSide side : setup.sides)
      for (const ScoreReading& reading : setup.readings) {
        if (reading.run != ScoreRun::Full) continue;
        if (side == SheetSide::Left) out.left.insert(reading.at.nm());
        if (side == SheetSide::Right) out.right.insert(reading.at.nm());
      }
  return out;
}

/// Every full score of the left edge read from the right one, however often the board is set.
ScorePlan fromTheRight(ScorePlan plan, Length width) {
  std::vector<ScoreSetup> moved;
  for (ScoreSetup& setup : plan.setups) {
    if (std::erase(setup.sides, SheetSide::Left) == 0) continue;
    ScoreSetup other{{SheetSide::Right}, {}};
    for (ScoreReading reading : setup.readings)
      if (reading.run == ScoreRun::Full) {
        reading.at = width - reading.at;
        other.readings.push_back(reading);
      }
    moved.push_back(std::move(other));
  }
  std::erase_if(plan.setups, [](const ScoreSetup& setup) { return setup.sides.empty(); });
  plan.setups.insert(plan.setups.end(), moved.begin(), moved.end());
  return plan;
}

/// How many lines moved from the left edge to the right one.
int expectMirrored(const BuiltPiece& piece, const Design& design) {
  const ScorePlan& right = piece.scorePlan;
  const ScorePlan left =
      planScoresFor(Hand::Left, piece.net, piece.flat, design.grid, design.board);
  EXPECT_TRUE(sameLines(linesOf(right, piece.flat), linesOf(left, piece.flat)))
      << planText(right) << planText(left);
  EXPECT_EQ(settings(right), settings(left));
  EXPECT_EQ(readings(right, ScoreRun::Short), readings(left, ScoreRun::Short));
  const Length width = Length::mm(piece.flat.width);
  const FromEdge before = fromEdges(right);
  const FromEdge after = fromEdges(left);
  int moved = 0;
  const auto onBoard = [&](Length at) { return design.board == Length() || at <= design.board; };
  for (const std::int64_t nm : before.left) {
    const Length other = width - Length::nanometres(nm);
    const auto told = [](const std::set<std::int64_t>& readings, std::int64_t wanted) {
      constexpr std::int64_t kOne = 1000;  // nm: what a plan takes for one setting
      return std::ranges::any_of(
          readings, [wanted](std::int64_t read) { return std::abs(read - wanted) <= kOne; });
    };
    const bool exact = told(after.right, other.nm());
    if (exact) {
      ++moved;
      continue;
    }
    // It may stay where it was only where both edges are in use, the other number cannot be set,
    // or the board would have to be set more often.
    const bool bothEdges = !before.right.empty();
    EXPECT_TRUE(told(after.left, nm));
    EXPECT_TRUE(bothEdges || !design.grid.holds(other) || !onBoard(other) ||
                settings(fromTheRight(right, width)) > settings(right))
        << planText(right) << planText(left);
  }
  return moved;
}

TEST(ScoreHandLaw, EveryStyleIsReadFromTheOtherEdge) {
  Random random(2611);
  int moved = 0;
  int pieces = 0;
  for (const Style& style : styles()) {
    std::vector<Design> designs{withItsExtras(style)};
    for (int i = 0; i < 6; ++i)
      if (const auto design = randomInsideLimits(random, style)) designs.push_back(*design);
    for (const Design& design : designs) {
      SCOPED_TRACE(std::string(style.id));
      const auto built = build(design);
      ASSERT_TRUE(built.ok());
      for (const BuiltPiece& piece : built->pieces) {
        ++pieces;
        moved += expectMirrored(piece, design);
        if (HasFailure()) return;
      }
    }
  }
  EXPECT_GT(pieces, 300);
  EXPECT_GT(moved, 300);
}

// Read from the left in score_plan_test.cpp: 24 40 77 93. The band is 117 sixteenths wide as it
// comes (common practice, no published source).
TEST(ScoreHandLaw, TheBandIsReadFromItsRightSide) {
  const Parameters parameters = standardParameters(**findStyle("belly-band"));
  const ToolGrid grid = ToolGrid::sixteenthInch();
  const Net net = (*findStyle("belly-band"))->build(parameters, {Length::mm(0.3), grid})[0].net;
  const FlatNet flat = flatten(net);
  const ScorePlan right = planScores(net, flat, grid);
  const ScorePlan left = planScoresFor(Hand::Left, net, flat, grid);
  ASSERT_EQ(left.setups.size(), 1U);
  EXPECT_EQ(left.setups[0].sides, std::vector{SheetSide::Right});
  ASSERT_EQ(left.setups[0].readings.size(), right.setups[0].readings.size());
  for (std::size_t i = 0; i < 4; ++i)
    EXPECT_EQ(left.setups[0].readings[3 - i].at,
              Length::mm(flat.width) - right.setups[0].readings[i].at);
}

}  // namespace
}  // namespace creasewright::testing
