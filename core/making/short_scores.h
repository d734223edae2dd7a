#pragma once

#include <vector>

#include "making/score_lines.h"

namespace creasewright {

/// The scores of a view that do not run all the way.
struct ShortScores {
  std::vector<ScoreSetup> setups;     ///< by the side where they start
  std::vector<FreeScore> freeScores;  ///< those that start away from the edges
};

/// Short scores for folding, and marks for straight cuts that run from an edge of the sheet to a
/// full score. `fullAcross` are the full scores that cross this view's lines (mm, ascending). All
/// are measured from the low side, but from the high side where only that reading is within the
/// `board` (zero = any length), or, with both within it, on the grid.
ShortScores planShortScores(const LineView& view, const std::vector<double>& fullAcross,
                            ToolGrid grid, Length board = {});

}  // namespace creasewright
