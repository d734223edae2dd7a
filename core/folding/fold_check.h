#pragma once

#include "base/problem.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// Checks the folded end state: every mate's flap lies in its target's plane within 0.05 mm plus
/// one caliper (mm), on the stated face when it is displaced at all, parallel to it within 0.05 mm
/// plus a tenth of a caliper over its extent, inside the target's outline but for 0.1 % or a strip
/// of a caliper, and with its own crease along the target's rim when the mate says so (within 0.05
/// mm plus two calipers), else inside the outline. `folded` is pose(net, 1). Problems:
/// MateOffPlane, MateOutsideTarget, CreaseMissesRim.
Problems checkMates(const Net& net, const Pose& folded, double caliper);

}  // namespace creasewright
