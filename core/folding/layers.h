#pragma once

#include <vector>

#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// How far each panel must move (mm, in panel 0's frame) so that every flap lies at least one
/// `caliper` from its target on the stated face, in a pose in which the flap lies in its target's
/// plane within `tolerance` mm; chains of mates add up. Panels whose own place already leaves that
/// room, or that are not yet folded home, stay. A crease folded flat (180 degrees) counts as a mate
/// of the child and its parent.
std::vector<Point3> layerOffsets(const Net& net, const Pose& pose, double caliper,
                                 double tolerance);

}  // namespace creasewright
