#pragma once

#include <vector>

#include "net/net.h"

namespace creasewright {

/// Those of a net's bends without which checkFoldPath finds more problems. A style declares where
/// its card may have to bend; at many measures a tuck flap, say, goes in without. `caliper` in mm.
/// Takes several checks of the path: too slow for every move of the mouse.
std::vector<Bend> neededBends(const Net& net, double caliper);

/// The net with its needed bends alone.
Net withNeededBends(Net net, double caliper);

}  // namespace creasewright
