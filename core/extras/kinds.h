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

/// The way of a band or sleeve, and of a ribbon, round the box; none where it finds no place, or
/// for another kind.
std::vector<WrapRound> bandRuns(const Extra& extra, const Host& host);
std::vector<WrapRound> ribbonRuns(const Extra& extra, const Host& host);

/// Ribbon once round or crosswise round a box, without bow (mm).
double ribbonRound(const std::array<double, 3>& sizes, bool cross);

}  // namespace creasewright
