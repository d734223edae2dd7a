#pragma once

#include <vector>

#include "geometry/region.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// A net laid flat in blank coordinates: origin at the blank's lower left corner, x right, y up,
/// millimetres, seen from the drawn face (the later inside).
struct FlatNet {
  double width = 0;  ///< of the blank, the bounding box of the outline
  double height = 0;
  std::vector<Polygon> panels;                 ///< one outline per panel
  std::vector<std::vector<Polygon>> openings;  ///< per panel, clockwise
  std::vector<Segment> creases;                ///< one per crease, p -> q
  std::vector<Polyline> slits;
  std::vector<Segment> partings;  ///< cuts between panels that lie edge to edge
  Region outline;                 ///< union of the panels, openings as holes
  Region waste;                   ///< blank minus outline (openings not counted)
  Pose frames;                    ///< panel frame -> blank, one per panel

  /// A point of `panel`'s own frame in blank coordinates.
  [[nodiscard]] Point place(int panel, Point p) const;
};

FlatNet flatten(const Net& net);

/// The same without what takes the union of the panels: no partings, outline and waste.
FlatNet layOut(const Net& net);

/// Every cut as an open or closed polyline in blank coordinates: the outline's rings (closed: first
/// point repeated), openings, partings and slits.
std::vector<Polyline> cutLines(const FlatNet& flat);

}  // namespace creasewright
