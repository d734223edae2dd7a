#pragma once

#include <vector>

#include "styles/parts/four_walls.h"
#include "styles/style.h"

namespace creasewright {

/// `length`, `width`, `height`, `roof` and `seam` of a box with a gable roof.
std::vector<ParameterSpec> gableParameters();

/// Walls take half a caliper, the seam and the bottom's flaps inside them one more each; the sides
/// must not be longer than front and back.
std::vector<Need> gableNeeds(const Room& room, const Parameters& chosen, const Workbench& bench);

/// The space between the walls, up to the roof.
Cavity insideUnderRoof(const FourWalls& walls);

}  // namespace creasewright
