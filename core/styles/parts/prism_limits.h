#pragma once

#include "styles/limits.h"
#include "styles/style.h"

namespace creasewright {

/// How many sides a box over a regular polygon has.
ParameterSpec sidesParameter();

/// Least distance across the flats of a polygon of `sides` whose base tabs are wide enough.
Limit leastAcross();

/// A glue seam that its wall has room for; `across` flats and `height` are the other parameters.
ParameterSpec wallSeamParameter(std::string_view acrossKey);

/// Room for the smallest glue seam.
Limit leastPrismHeight();

/// The number of sides in hand, inside its limits.
int sidesOf(const Parameters& parameters);

/// Distance from the middle to the sides (mm) of the smallest regular polygon that holds the eased
/// product: a round one touches every side, another is held by its bounds (apothemAround).
double apothemFor(const Room& room, int sides);

/// Depth of the base's glue tabs (mm): as deep as they can be, at most 10 mm.
double baseTab(double deepest, double caliper);

/// Words of the stages and panels that these parts bring.
NetWords prismWords();

}  // namespace creasewright
