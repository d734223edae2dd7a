#pragma once

#include <vector>

#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// A line of a panel along which the card goes on into a neighbour, by a crease or by a flap glued
/// to the panel's rim: where the neighbour is turned up, nothing that lies against the panel can
/// stick out over the line.
struct JoinedEdge {
  int panel = 0;
  int neighbour = 0;
  int frame = 0;   ///< the panel in whose frame `line` is
  Segment line;    ///< millimetres
  int crease = 0;  ///< index into Net::creases; -1 where a glued flap joins the two
  int stage = 0;   ///< from the end of this stage on; 0 for creases
};

std::vector<JoinedEdge> joinedEdges(const Net& net);

/// An edge in the frame of its panel.
struct PlacedEdge {
  Point from;
  Point along;    ///< unit, counter-clockwise round the panel
  Point outward;  ///< unit, square to it
  double length = 0;
};

PlacedEdge placedEdge(const Net& net, const JoinedEdge& edge, const Pose& pose);

/// How far the neighbour is turned about the edge out of the panel's plane, in degrees, positive
/// towards the drawn face. `angles` by crease.
double turnAt(const Net& net, const JoinedEdge& edge, const Pose& pose,
              const std::vector<Angle>& angles);

}  // namespace creasewright
