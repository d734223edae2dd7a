#pragma once

#include <optional>
#include <vector>

#include "folding/surfaces/solid.h"
#include "folding/surfaces/view.h"
#include "folding/surfaces/visible_edges.h"
#include "geometry/plane_map.h"
#include "geometry/region.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// A part of one panel face or of a solid in picture coordinates (mm, x right, y up), counter-
/// clockwise; openings are joined to the outline by doubled edges.
struct Facet {
  int panel = 0;             ///< -1 for a solid
  Face face = Face::Inside;  ///< which face the viewer sees; Outside for a solid
  Polygon outline;
  double light = 1;  ///< 0 dark .. 1 fully lit, by the face's angle to a light from the upper left
};

struct FoldPicture {
  /// Painted in this order hides what is hidden; what one facet alone hides is left out.
  std::vector<Facet> facets;
  std::vector<VisibleEdge> edges;  ///< only the visible parts
  Bounds extent;
  std::vector<PlaneMap> planes;      ///< by panel: its frame in picture coordinates
  std::optional<Colour> solid = {};  ///< colour of the first solid, where it has one
};

/// Draws a pose with hidden surfaces removed exactly: panels are split by a BSP tree; panels in one
/// plane are ordered by the mates' layers. `up` is the direction in panel 0's frame that is drawn
/// upwards at tilt 0. Creases of kind Flat draw a line only
/// where they are the outline. `solids` are in the frame of panel 0.
FoldPicture drawFolded(const Net& net, const Pose& pose, const View& view, Point3 up,
                       const std::vector<Solid>& solids = {});

}  // namespace creasewright
