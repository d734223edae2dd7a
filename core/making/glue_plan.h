#pragma once

#include <vector>

#include "net/flat_net.h"

namespace creasewright {

/// One place for adhesive: on the flap's face that meets the target.
struct GlueArea {
  int panel = 0;
  int onto = 0;
  Face face = Face::Inside;      ///< face of the target it goes onto
  Face flapFace = Face::Inside;  ///< face of the flap that takes the adhesive
  Polygon area;                  ///< blank coordinates, 1 mm from creases, edges and openings
};

/// Adhesive stays 1 mm away from creases, edges and the openings of both panels (common practice,
/// no published source); a flap too small for that takes a line along its middle. What runs round
/// an opening is several areas.
std::vector<GlueArea> planGlue(const Net& net, const FlatNet& flat);

}  // namespace creasewright
