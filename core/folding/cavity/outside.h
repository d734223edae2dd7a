#pragma once

#include "folding/cavity/cavity.h"

namespace creasewright {

/// The box about a folded piece, in the frame of the cavity's panel: all panels, which are
/// mid-surfaces, and half a caliper on either side (mm). Empty (all zero) when that panel does not
/// exist.
CavityBox outsideBox(const Net& net, const Pose& folded, const Cavity& cavity, double caliper);

/// Its size along the axes of the cavity.
CavitySize measureOutside(const Net& net, const Pose& folded, const Cavity& cavity, double caliper);

}  // namespace creasewright
