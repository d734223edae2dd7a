#pragma once

#include "geometry/region.h"

namespace creasewright {

/// All within `distance` mm of a region: its corners grow round, by arcs that are 0.01 mm off at
/// the most, to the inside.
Region grownRound(const Region& region, double distance);

}  // namespace creasewright
