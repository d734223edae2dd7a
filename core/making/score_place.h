#pragma once

#include "making/score_plan.h"

namespace creasewright {

/// Where a reading, taken at `side` of a blank of `width` x `height` mm, puts its line: blank
/// coordinates, in mm.
Segment scoredLine(SheetSide side, const ScoreReading& reading, double width, double height);

}  // namespace creasewright
