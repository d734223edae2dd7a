#pragma once

#include <vector>

#include "net/net.h"

namespace creasewright {

/// Convex polygons that together make up a panel without its openings, counter-clockwise, in the
/// panel's frame. A convex panel is its own only part.
std::vector<Polygon> convexParts(const Panel& panel);

}  // namespace creasewright
