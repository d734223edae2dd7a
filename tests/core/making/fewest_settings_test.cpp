#include <iostream>
#include <set>

#include <gtest/gtest.h>

#include "core/laws/law_book.h"
#include "core/laws/random_design.h"
#include "core/making/score_plan_text.h"
#include "making/score_sides.h"
#include "support/random.h"

// The score plan against plain enumeration: whatever lines a plan scores from side to side, no
// other choice of the sides they are read from needs fewer settings, or as many from fewer sides.
namespace creasewright {
namespace {

/// What a choice costs: lines beyond the board, settings off the grid, settings, sides.
using Cost = std::array<int, 4>;

constexpr std::int64_t kSame = 1000;  // nm

/// A line that runs all the way, by its distances from the two sides it can be read from.
struct Line {
  bool level;
  Length low;
  Length high;
};

std::vector<Line> fullLines(const ScorePlan& plan, const FlatNet& flat) {
  std::vector<Line> lines;
  for (const ScoreSetup& setup : plan.setups)
    for (const ScoreSide& side : testing::placed(setup, flat)) {
      if (side.reading.run != ScoreRun::Full) continue;
      const bool level = side.line.a.y == side.line.b.y;
      const double at = level ? side.line.a.y : side.line.a.x;
      const double across = level ? flat.height : flat.width;
      lines.push_back({level, Length::mm(at), Length::mm(across - at)});
    }
  return lines;
}

class Count {
 public:
  Count(ToolGrid grid, Length board) : grid_(grid), board_(board) {}
  void read(SheetSide side, Length at, Length otherwise) {
    sides_.insert(side);
    const bool reaches = board_ == Length() || at <= board_;
    if (!reaches && otherwise <= board_) ++beyond_;
    for (const Length known : settings_)
      if (std::abs((known - at).nm()) <= kSame) return;
    settings_.push_back(at);
    if (!grid_.holds(at)) ++off_;
  }
  [[nodiscard]] Cost cost() const {
    return {beyond_, off_, static_cast<int>(settings_.size()), static_cast<int>(sides_.size())};
  }

 private:
  ToolGrid grid_;
  Length board_;
  std::set<SheetSide> sides_;
  std::vector<Length> settings_;
  int beyond_ = 0;
  int off_ = 0;
};

Cost costOf(const std::vector<Line>& lines, unsigned choice, ToolGrid grid, Length board) {
  Count count(grid, board);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const Line& line = lines[i];
    if ((choice >> i & 1U) == 0)
      count.read(line.level ? SheetSide::Bottom : SheetSide::Left, line.low, line.high);
    else
      count.read(line.level ? SheetSide::Top : SheetSide::Right, line.high, line.low);
  }
  return count.cost();
}

Cost costOf(const ScorePlan& plan, const FlatNet& flat, ToolGrid grid, Length board) {
  Count count(grid, board);
  for (const ScoreSetup& setup : plan.setups)
    for (const SheetSide side : setup.sides)
      for (const ScoreReading& reading : setup.readings) {
        if (reading.run != ScoreRun::Full) continue;
        const bool level = side == SheetSide::Bottom || side == SheetSide::Top;
        count.read(side, reading.at, Length::mm(level ? flat.height : flat.width) - reading.at);
      }
  return count.cost();
}

std::string words(const Cost& cost) {
  return std::to_string(cost[0]) + " beyond the board, " + std::to_string(cost[1]) +
         " off the grid, " + std::to_string(cost[2]) + " settings, " + std::to_string(cost[3]) +
         " sides";
}

struct SettingsTally {
  int judged = 0;
  int tooMany = 0;
};

void judgeSettings(const BuiltPiece& piece, ToolGrid grid, Length board, SettingsTally& tally) {
  constexpr std::size_t kMostLines = 13;
  const ScorePlan plan = planScores(piece.net, piece.flat, grid, board);
  const std::vector<Line> lines = fullLines(plan, piece.flat);
  if (lines.empty()) return;
  if (lines.size() > kMostLines) {
    ++tally.tooMany;
    return;
  }
  Cost least = costOf(lines, 0, grid, board);
  for (unsigned choice = 1; choice < 1U << lines.size(); ++choice)
    least = std::min(least, costOf(lines, choice, grid, board));
  const Cost told = costOf(plan, piece.flat, grid, board);
  EXPECT_EQ(told, least) << piece.name << ": " << words(told) << ", but " << words(least)
                         << " would do\n"
                         << testing::planText(plan);
  ++tally.judged;
}

void judgeAll(const Design& design, SettingsTally& tally) {
  const auto built = build(design);
  ASSERT_TRUE(built);
  for (const BuiltPiece& piece : built->pieces)
    for (const Length board : {Length(), Length::inches(12), Length::mm(210), Length::mm(100)})
      judgeSettings(piece, design.grid, board, tally);
}

TEST(FewestSettings, EveryStyleAsItComesOnEveryGrid) {
  SettingsTally tally;
  for (const Style& style : styles())
    for (const ToolGrid grid : {ToolGrid::none(), ToolGrid::eighthInch(), ToolGrid::millimetre()}) {
      SCOPED_TRACE(std::string(style.id));
      Design design;
      design.styleId = style.id;
      design.grid = grid;
      design.parameters = standardParameters(style);
      judgeAll(design, tally);
    }
  std::cout << tally.judged << " pieces judged, " << tally.tooMany << " with too many lines\n";
  EXPECT_GT(tally.judged, 300);
}

TEST(FewestSettings, EveryStyleAtRandom) {
  testing::Random random(1302);
  SettingsTally tally;
  for (const Style& style : styles())
    for (int i = 0; i < 6; ++i) {
      const auto design = testing::randomInsideLimits(random, style);
      if (!design) continue;
      SCOPED_TRACE(testing::describe(*build(*design)));
      judgeAll(*design, tally);
      if (HasFailure()) return;
    }
  std::cout << tally.judged << " pieces judged, " << tally.tooMany << " with too many lines\n";
  EXPECT_GT(tally.judged, 300);
}

/// Sheets where directions, sides and grid pull against one another, more than nets ever do.
TEST(FewestSettings, RandomLinesOnRandomSheets) {
  testing::Random random(1303);
  for (int round = 0; round < 400; ++round) {
    SCOPED_TRACE("round " + std::to_string(round));
    const int width = random.whole(8, 16);
    const int height = random.whole(0, 2) == 0 ? width : random.whole(8, 16);
    std::vector<LineView> views(2);
    std::vector<Line> lines;
    for (const bool level : {false, true}) {
      LineView& view = views[level ? 1 : 0];
      view.swapped = level;
      view.width = level ? height : width;
      view.height = level ? width : height;
      for (int at = 1; at < view.width; ++at) {
        if (random.whole(0, 2) != 0 || lines.size() > 10) continue;
        view.lines.push_back({static_cast<double>(at), {{0, view.height}}, {}, true});
        lines.push_back({level, Length::mm(at), Length::mm(view.width - at)});
      }
    }
    if (lines.empty()) continue;
    const ToolGrid grid(Length::nanometres(random.whole(1, 3) * 1'000'000));
    const Length board = Length::mm(random.whole(0, 2) == 0 ? 0 : random.whole(5, 12));
    Cost least = costOf(lines, 0, grid, board);
    for (unsigned choice = 1; choice < 1U << lines.size(); ++choice)
      least = std::min(least, costOf(lines, choice, grid, board));
    ScorePlan plan;
    plan.setups = chooseSides({views[0], views[1]}, grid, board);
    FlatNet flat;
    flat.width = width;
    flat.height = height;
    EXPECT_EQ(fullLines(plan, flat).size(), lines.size());
    const Cost told = costOf(plan, flat, grid, board);
    EXPECT_EQ(told, least) << words(told) << ", but " << words(least) << " would do\n"
                           << testing::planText(plan);
  }
}

/// No reading of a short score lies beyond the board when the other corner is within it.
TEST(FewestSettings, ShortScoresRespectTheBoard) {
  testing::Random random(1304);
  int judged = 0;
  for (const Style& style : styles())
    for (int i = 0; i < 6; ++i) {
      const auto design = testing::randomInsideLimits(random, style);
      if (!design) continue;
      const auto built = build(*design);
      ASSERT_TRUE(built);
      const Length board = Length::mm(random.between(60, 300));
      for (const BuiltPiece& piece : built->pieces)
        for (const ScoreSetup& setup :
             planScores(piece.net, piece.flat, design->grid, board).setups)
          for (const ScoreReading& reading : setup.readings) {
            if (reading.run != ScoreRun::Short || reading.at <= board) continue;
            const bool upright =
                reading.measuredFrom == SheetSide::Left || reading.measuredFrom == SheetSide::Right;
            const Length across = Length::mm(upright ? piece.flat.width : piece.flat.height);
            EXPECT_GT(across - reading.at, board) << testing::describe(*built);
            ++judged;
          }
    }
  std::cout << judged << " readings beyond the board from both corners\n";
}

}  // namespace
}  // namespace creasewright
