#pragma once

#include "base/problem.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// Checks the folded end state: every mate's flap lies in its target's plane within 0.05 mm plus
/// the caliper of the layers, inside its outline, on the stated rim. `folded` is pose(net, 1).
Problems checkMates(const Net& net, const Pose& folded, double caliper);

}  // namespace creasewright
