#pragma once

#include <vector>

#include "geometry/polygon.h"
#include "styles/parameter_spec.h"
#include "styles/parameters.h"
#include "units/angle.h"

namespace creasewright {

/// How far an extra lies from its place: `across` and `up`, lengths that stay as they are, and
/// `across-share` and `up-share`, percents of its face that follow it when it grows; its `turn`.
std::vector<ParameterSpec> placeMeasures();

// Who looks at a face sees its panel, which is drawn from the inside, as in a mirror: these are
// told as they are seen, and are here as they are drawn.

/// From its place on a face that stands upright, mm; `across` and `up` alone, or with the shares
/// of a face of such bounds.
Point shiftOf(const Parameters& parameters);
Point shiftOn(const Bounds& face, const Parameters& parameters);
/// Whether it is told to lie elsewhere than at its place.
bool isShifted(const Parameters& parameters);
Angle turnOf(const Parameters& parameters);
/// -1 to the left of who looks, 1 to the right, in the frame as it is drawn.
constexpr int drawnAcross(int seen) { return -seen; }

}  // namespace creasewright
