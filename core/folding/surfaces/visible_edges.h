#pragma once

#include <array>
#include <vector>

#include "folding/surfaces/plate.h"
#include "folding/surfaces/view.h"

namespace creasewright {

/// A visible part of an edge in picture coordinates (mm).
struct VisibleEdge {
  Segment line;
  bool crease = false;  ///< else an open edge of the card or of a solid
};

/// A straight edge in space and the one or two plates it bounds or lies on (-1 for none), as
/// indices into the scene's plates; a plate never hides its own edges.
struct SpaceEdge {
  Point3 a;
  Point3 b;
  std::array<int, 2> plates{-1, -1};
  bool crease = false;
};

/// The parts of `edges` that no plate hides from the camera. An edge in the plane of a plate is
/// hidden when the plates it belongs to lie behind that plane, or under it in the order of
/// liesOver(). Exact up to `tolerance` mm of depth; parts shorter than 0.001 mm are left out.
std::vector<VisibleEdge> visibleEdges(const std::vector<SpaceEdge>& edges,
                                      const std::vector<Plate>& plates, const Camera& camera,
                                      double tolerance);

}  // namespace creasewright
