#pragma once

#include <string>
#include <vector>

#include "net/flat_net.h"
#include "units/tool_grid.h"

namespace creasewright {

enum class SheetSide { Left, Right, Bottom, Top };
enum class ScoreRun { Full, Short };
enum class ScorePurpose { Fold, CutMark };

/// One setting of the board.
struct ScoreReading {
  Length at;  ///< from the measured side
  ScoreRun run = ScoreRun::Full;
  ScorePurpose purpose = ScorePurpose::Fold;
  bool valley = true;  ///< folds towards the drawn face (Fold only)
  // Short scores only: the line starts at the sheet's edge on the setup's own side, `at` is
  // measured along that side from `measuredFrom`, and stops at the full score number `toLine` of
  // that side.
  SheetSide measuredFrom = SheetSide::Bottom;
  Length to;       ///< how deep it runs from the edge
  int toLine = 0;  ///< 1 = the full score nearest that side; 0 = none
};

/// Settings shared by several sides: turn the sheet and repeat. Full scores read from one side may
/// be shared out over several setups.
struct ScoreSetup {
  std::vector<SheetSide> sides;
  std::vector<ScoreReading> readings;
};

/// A score that is not parallel to a side, or starts away from the edges: by its end points.
struct FreeScore {
  Segment line;  ///< blank coordinates
  bool valley = true;
};

struct ScorePlan {
  std::vector<ScoreSetup> setups;
  std::vector<FreeScore> freeScores;
};

/// What the hand does at a scoring board. Full scores run across the whole blank where no visible
/// panel is crossed (waste and glued tabs do not mind); they are read from the sides that need the
/// fewest settings (chooseSides()). What lies farther from a side than a `board` is wide (zero =
/// any width), full scores and short ones, is read from the opposite side where it fits from there.
ScorePlan planScores(const Net& net, const FlatNet& flat, ToolGrid grid, Length board = {});

}  // namespace creasewright
