#pragma once

#include <vector>

#include "making/score_lines.h"

namespace creasewright {

/// Settings for the full scores of a view, one setup per side that is used. Compares a mirrored
/// pair of sides, all from either side, and each line from the side where its reading lies on the
/// grid; the fewest readings off the grid win, then the fewest settings and turns of the sheet. A
/// mirrored pair is only given up when that brings every reading onto the grid. Readings longer
/// than a `board` (zero = any length) are taken from the opposite side when they fit from there.
std::vector<ScoreSetup> chooseSides(const LineView& view, ToolGrid grid, Length board = {});

/// Whether two lists of readings set the board alike (within a micrometre).
bool sameReadings(const std::vector<ScoreReading>& a, const std::vector<ScoreReading>& b);

}  // namespace creasewright
