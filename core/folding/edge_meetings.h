#pragma once

#include <string>
#include <vector>

#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// Two cut edges of different panels that come to lie on one another when the piece is folded.
struct EdgeMeeting {
  int panel = 0;
  std::string edge;  ///< a name of Panel::edges
  int other = 0;
  std::string otherEdge;
  double length = 0;  ///< mm along which they meet
  double loose = 0;   ///< of it, where no fold and no joint within 3 mm leads from one to the other
};

/// All of a folded piece, those that are declared open (Net::openEdges) too. Edges meet within a
/// caliper (mm).
std::vector<EdgeMeeting> edgeMeetings(const Net& net, const Pose& folded, double caliper);

/// Those that are loose over 5 mm or more and not declared open.
std::vector<EdgeMeeting> looseEdges(const Net& net, const Pose& folded, double caliper);

}  // namespace creasewright
