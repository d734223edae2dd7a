#pragma once

#include <vector>

#include "making/score_lines.h"

namespace creasewright {

/// A score of a view from an edge of the sheet inwards.
struct ShortRun {
  double at = 0;         ///< mm from the low side
  double to = 0;         ///< where it stops, mm from the lines' start
  bool fromEnd = false;  ///< starts at the lines' end
  ScorePurpose purpose = ScorePurpose::Fold;
  bool valley = true;
};

/// Straight cuts worth marking with the scoring tool: they run from an edge of the sheet, over
/// waste or along panels, to a full score; at least 6 mm long and more than 1 mm beside any full
/// score.
std::vector<ShortRun> findCutMarks(const LineView& view, const std::vector<double>& fullAcross);

/// Number of the full score at `at` counted from the lines' start or end, 1 the first; 0 when
/// there is none.
int lineNumber(const std::vector<double>& fullAcross, double at, bool fromEnd);

}  // namespace creasewright
