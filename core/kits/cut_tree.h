#pragma once

#include "kits/cutting.h"

namespace creasewright {

/// The two parts of a rectangle cut at `at` from its left or lower edge.
CutNode cutAt(const CutNode& frame, bool upright, Length at);

/// A blank in the lower left of a rectangle, trimmed out by one or two cuts.
CutNode blankIn(const CutNode& frame, Length width, Length height, int item, bool turned);

}  // namespace creasewright
