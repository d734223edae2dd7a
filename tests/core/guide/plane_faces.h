#pragma once

#include <vector>

#include "geometry/polygon.h"

namespace creasewright::testing {

/// A side of a drawn line: runs from -> to with its face on the left.
struct FaceEdge {
  Point from;
  Point to;
  int face = 0;
  int across = 0;  ///< face on the right
};

/// The faces into which segments divide the plane.
struct PlaneFaces {
  std::vector<Polygon> outlines;  ///< counter-clockwise faces; clockwise = round a whole group
  std::vector<FaceEdge> edges;
};

/// Places nearer than 5e-6 mm are one.
PlaneFaces planeFaces(const std::vector<Segment>& segments);

}  // namespace creasewright::testing
