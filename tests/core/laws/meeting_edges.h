#pragma once

#include <string>
#include <vector>

#include "document/build.h"

namespace creasewright::testing {

/// A cut edge of one panel that meets an edge of another one in the folded piece; mm along it.
struct Meeting {
  int panel = 0;
  std::string edge;
  int other = 0;
  std::string otherEdge;
  int across = -1;  ///< the panel beyond it where the other edge is a crease; -1 where it is cut
  double length = 0;
  double open = 0;  ///< of it, where nothing near by joins the two panels
};

/// All meetings of a piece: edges within 0.05 mm and a caliper of each other. Two panels are
/// joined at a point when creases and mates that hold (not those that rest), each within 3 mm of
/// the point, lead from one to the other.
std::vector<Meeting> meetingEdges(const BuiltPiece& piece, double caliper);

}  // namespace creasewright::testing
