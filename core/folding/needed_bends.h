#pragma once

#include <vector>

#include "net/net.h"

namespace creasewright {

/// Those of a net's bends without which checkFoldPath finds more problems. A style declares where
/// its card may have to bend; at many measures a tuck flap, say, goes in without. `caliper` in mm.
std::vector<Bend> neededBends(const Net& net, double caliper);

}  // namespace creasewright
