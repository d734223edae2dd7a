#pragma once

#include <cstdint>
#include <vector>

#include "folding/surfaces/solid.h"
#include "folding/surfaces/view.h"
#include "geometry/polygon.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// The soft shadow of what stands on the ground, as a small picture to be drawn larger under it.
struct GroundShadow {
  Bounds extent;  ///< picture coordinates (mm), as FoldPicture has them
  Bounds sharp;   ///< of it: where the shadow would be if its rim were not soft
  int columns = 0;
  int rows = 0;
  std::vector<std::uint8_t> dark;  ///< rows from the top, each from the left: 0 .. 255 black
  [[nodiscard]] bool empty() const { return dark.empty(); }
};

/// What a posed net and solids keep from the ground of the light of lampOf(): all panels without
/// their openings, along the light onto the level through the lowest point. Nothing where the
/// ground is seen from below or along it. Arguments as for drawFolded().
GroundShadow groundShadow(const Net& net, const Pose& pose, const View& view, Point3 up,
                          const std::vector<Solid>& solids = {});

}  // namespace creasewright
