#pragma once

#include <vector>

#include "geometry/point.h"
#include "styles/parameter_spec.h"
#include "styles/parameters.h"
#include "units/angle.h"

namespace creasewright {

/// How far an extra lies from its place, `across` and `up`, and its `turn`.
std::vector<ParameterSpec> placeMeasures();

// Who looks at a face sees its panel, which is drawn from the inside, as in a mirror: these are
// told as they are seen, and are here as they are drawn.

/// From its place on a face that stands upright, mm.
Point shiftOf(const Parameters& parameters);
Angle turnOf(const Parameters& parameters);
/// -1 to the left of who looks, 1 to the right, in the frame as it is drawn.
constexpr int drawnAcross(int seen) { return -seen; }

}  // namespace creasewright
