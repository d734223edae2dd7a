#pragma once

#include <array>
#include <vector>

#include "making/score_lines.h"

namespace creasewright {

/// Settings for all full scores of a sheet. Each score can be read from either of the two sides it
/// is parallel to; of all choices, over both directions together, the one with
///
///  1. only readings within the `board` (zero = any length) where one of the two is,
///  2. the fewest distinct settings off the `grid`,
///  3. the fewest distinct settings (readings within a micrometre are one, whatever side they are
///     measured from),
///  4. the fewest sides to work from,
///  5. the fewest of right and top among these, then the shortest readings
///
/// is taken. A setup lists what is read from all its sides: what several sides share is told once
/// for them where that does not cost more turns of the sheet than it saves readings.
std::vector<ScoreSetup> chooseSides(const std::array<LineView, 2>& views, ToolGrid grid,
                                    Length board = {});

/// Whether two lists of readings set the board alike (within a micrometre).
bool sameReadings(const std::vector<ScoreReading>& a, const std::vector<ScoreReading>& b);

}  // namespace creasewright
