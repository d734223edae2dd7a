#pragma once

#include "making/score_plan.h"

namespace creasewright {

/// Whether it is the left or the right one.
bool isUpright(SheetSide side);
/// Whether readings from it fall as places rise: the right one and the top.
bool isFar(SheetSide side);

/// Where a reading, taken at `side` of a blank of `width` x `height` mm, puts its line: blank
/// coordinates, in mm.
Segment scoredLine(SheetSide side, const ScoreReading& reading, double width, double height);

}  // namespace creasewright
