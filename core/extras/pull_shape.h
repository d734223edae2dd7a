#pragma once

#include <vector>

#include "extras/extra_kind.h"

namespace creasewright {

/// The middle line of the loop of a ribbon pull as it stands out by itself: x along the holes, y
/// out of the face, mm from the card's outside. It is as long as the loop taut (`pullLoopLength`).
Polyline pullLoop(const RibbonPull& pull);

/// Of the loop outside, from hole to hole, mm.
double pullLoopLength(const RibbonPull& pull);

/// Its two ends and their knots as they lie on the inside of the panel, in the frame of the pull's
/// place, cut off where the panel ends.
std::vector<Polygon> pullEnds(const RibbonNeed& need, const Panel& panel);

}  // namespace creasewright
