#pragma once

#include "extras/extra_kind.h"

namespace creasewright {

// Kinds of extras, a function each; extra_kind.cpp lists them.
ExtraKind bandExtra();
ExtraKind sleeveExtra();
ExtraKind matsExtra();
ExtraKind labelExtra();
ExtraKind tagExtra();
ExtraKind windowExtra();
ExtraKind platformExtra();
ExtraKind slipExtra();
ExtraKind ribbonExtra();
ExtraKind bowExtra();

/// Where the ways of a ribbon cross, or the middle of its upper side: x along the box, z into it.
Transform crossingOf(const RibbonNeed& ribbon);

/// Ribbon along all its ways, without bow (mm).
double ribbonRound(const std::vector<RibbonWay>& ways);

/// Ribbon is cut to whole centimetres or half inches.
ToolGrid ribbonSteps(ToolGrid grid);

}  // namespace creasewright
