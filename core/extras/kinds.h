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

/// Ribbon once round or crosswise round a box, without bow (mm).
double ribbonRound(const std::array<double, 3>& sizes, bool cross);

}  // namespace creasewright
