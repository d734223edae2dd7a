#pragma once

#include "net/pose.h"
#include "styles/style.h"

namespace creasewright {

/// Size of the largest product-aligned cuboid about the cavity's seed that meets no card: panels of
/// the folded pose count with half a caliper on either side, and flaps glued or resting on an inner
/// face with their own full thickness. Returned as the product's length, width, height (mm).
struct CavitySize {
  double length = 0;
  double width = 0;
  double height = 0;
};

CavitySize measureCavity(const Net& net, const Pose& folded, const Cavity& cavity, double caliper);

}  // namespace creasewright
