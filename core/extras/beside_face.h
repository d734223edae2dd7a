#pragma once

#include <string>
#include <vector>

#include "extras/host.h"

namespace creasewright {

/// Where another part of the folded box lies against a face.
struct BesideFace {
  std::string name;  ///< the panel, or the piece where another piece stands there
  Region area;       ///< in the face's panel frame, cut to the face
};

/// Card that lies behind a face of the finished box, between it and the room for the product: glued
/// seams and tabs, tucks, inner walls, whether they are joined to it or only stand there; and the
/// piece inside, where that has card on this side. An opening there would be cut through glue, or
/// show card.
std::vector<BesideFace> behindFace(const Host& host, const HostFace& face);

/// Card of the same piece that lies on the outside of a face: a closing flap, the back of a band.
std::vector<BesideFace> onFace(const Host& host, const HostFace& face);

/// All their areas together.
Region joined(const std::vector<BesideFace>& parts);

}  // namespace creasewright
