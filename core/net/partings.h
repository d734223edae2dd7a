#pragma once

#include <vector>

#include "geometry/polygon.h"

namespace creasewright {

/// Where two panels lie edge to edge in the flat net without a crease between them: the card must
/// be cut there, though the union of the panels shows no edge. Blank coordinates, mm.
std::vector<Segment> findPartings(const std::vector<Polygon>& panels,
                                  const std::vector<Segment>& creases);

}  // namespace creasewright
