#pragma once

#include <vector>

#include "document/build.h"
#include "geometry/plane_map.h"

namespace creasewright {

/// The way up of a patterned paper that a piece is cut from, a unit vector in the frame of its
/// panel 0: upwards as the box stands where that panel is a wall, else away from whoever looks at
/// the box from its front. What is glued onto a face was drawn upright.
Point paperUp(const BuiltDesign& built, const BuiltPiece& piece);

/// By how many quarters the blank of a piece is turned left, 0 to 3, so that the paper it is cut
/// from stands upright.
int quartersToPaper(const BuiltDesign& built, const BuiltPiece& piece);

/// Where the paper of a net lies, by panel: its millimetres, x right and y up as one looks at the
/// print, in the panel's frame. It runs on from panel to panel over every crease; a motif lies in
/// the middle of panel 0. A print on the back (`behind`) is seen from the drawn side of the net.
std::vector<PlaneMap> paperPlaces(const Net& net, Point up, bool behind);

/// The same on the blank as it lies flat.
PlaneMap paperOnBlank(const Net& net, const FlatNet& flat, Point up, bool behind);

}  // namespace creasewright
