#pragma once

#include "folding/cavity.h"

namespace creasewright {

/// Outer size of a folded piece along the axes of its cavity: the box about all panels, which are
/// mid-surfaces, and one caliper (mm).
CavitySize measureOutside(const Net& net, const Pose& folded, const Cavity& cavity, double caliper);

}  // namespace creasewright
