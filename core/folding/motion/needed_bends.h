#pragma once

#include <vector>

#include "net/net.h"

namespace creasewright {

/// Those of a net's bends without which checkFoldPath finds more problems than the `found` that it
/// finds with all of them. A style declares where its card may have to bend; at many measures a
/// tuck flap, say, goes in without. `caliper` in mm. Takes a check of the path for each bend:
/// foldPlan() keeps what comes of it.
std::vector<Bend> neededBends(const Net& net, double caliper, std::size_t found);

/// The net with its needed bends alone.
Net withNeededBends(Net net, double caliper);

}  // namespace creasewright
