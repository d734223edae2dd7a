#pragma once

#include <vector>

#include "extras/extra_kind.h"

namespace creasewright {

/// Where the ways of a ribbon cross, or the middle of its upper side: x along the box, z into it.
Transform crossingOf(const RibbonNeed& ribbon);

/// Ribbon along all its ways, without bow (mm).
double ribbonRound(const std::vector<RibbonWay>& ways);

/// Ribbon is cut to whole centimetres or half inches.
ToolGrid ribbonSteps(ToolGrid grid);

}  // namespace creasewright
