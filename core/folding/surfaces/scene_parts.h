#pragma once

#include <vector>

#include "folding/surfaces/solid.h"
#include "folding/surfaces/visible_edges.h"

namespace creasewright {

/// Everything in a picture, before the camera sees it. Plates that belong to panels have the panel
/// as owner, those of solids -1 - index.
struct SceneParts {
  std::vector<Plate> plates;
  std::vector<SpaceEdge> edges;
  double size = 1;  ///< largest extent along an axis, mm
};

/// `towardsEye` decides which faces and outlines of the solids take part.
SceneParts sceneParts(const Net& net, const Pose& pose, const std::vector<Solid>& solids,
                      Point3 towardsEye);

}  // namespace creasewright
