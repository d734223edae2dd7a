#pragma once

#include "geometry/region.h"

namespace creasewright {

/// One ring for an area with holes: every hole is joined to the outer ring by a doubled edge
/// between two corners that see each other.
Polygon keyhole(const Area& area);

}  // namespace creasewright
