#pragma once

#include <vector>

#include "geometry/polygon.h"
#include "geometry/transform.h"

namespace creasewright {

/// A flat piece that lies on a face, in the frame of the box's first piece.
struct LaidPiece {
  Polygon outline;
  Transform place;
  double caliper = 0;  ///< mm
};

/// Its outer face.
std::vector<Point3> topOf(const LaidPiece& piece);

/// How far what lies at a place (x to the right, y up, z into the box) must be lifted off, so that
/// its outline is above all pieces that it lies over, mm.
double liftOver(const std::vector<LaidPiece>& laid, const Polygon& outline, const Transform& place);

}  // namespace creasewright
