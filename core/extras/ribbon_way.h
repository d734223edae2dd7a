#pragma once

#include <vector>

#include "extras/extra_kind.h"

namespace creasewright {

/// Where the ways of a ribbon cross, or the middle of its upper side: x along the box, z into it.
Transform crossingOf(const RibbonNeed& ribbon);

/// Ribbon along all its ways, without bow (mm).
double ribbonRound(const std::vector<RibbonWay>& ways);

/// How far a way lies from the middle of the box on the side of an axis to which `sign` points, mm.
double reachOf(const RibbonWay& way, std::size_t side, double sign);

/// Ribbon is cut to whole centimetres or half inches.
ToolGrid ribbonSteps(ToolGrid grid);

}  // namespace creasewright
