#pragma once

#include <vector>

#include "geometry/region.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// Where the eye is: turned about the box and looking down on it; orthographic.
struct View {
  Angle turn = Angle::degrees(-35);  ///< about the upright axis
  Angle tilt = Angle::degrees(25);   ///< above the ground
};

/// A visible part of one panel face in picture coordinates (mm, x right, y up).
struct Facet {
  int panel = 0;
  Face face = Face::Inside;  ///< which face the viewer sees
  Polygon outline;
  double light = 1;  ///< 0 dark .. 1 fully lit, by the face's angle to the light
};

/// A visible part of a panel edge.
struct VisibleEdge {
  Segment line;
  bool crease = false;  ///< else an open edge of the card
};

/// A solid shown with the box (the product), already placed in the frame of panel 0.
struct Solid {
  std::vector<std::vector<Point3>> faces;  ///< convex, outward by the right-hand rule
};

struct FoldPicture {
  std::vector<Facet> facets;       ///< painted in this order hides what is hidden
  std::vector<VisibleEdge> edges;  ///< only the visible parts
  Bounds extent;
};

/// Draws a pose with hidden surfaces removed exactly: panels are split by a BSP tree; panels in one
/// plane are ordered by the mates' layers. `up` is the direction in panel 0's frame that is drawn
/// upwards at tilt 0.
FoldPicture drawFolded(const Net& net, const Pose& pose, const View& view, Point3 up);

}  // namespace creasewright
