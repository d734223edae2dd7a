#pragma once

#include "extras/extra_kind.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// Adds a ribbon round the box and its bow as panels that lie just off what it goes over; while its
/// `share` grows to 1 they appear one after the other.
void addRibbon(const RibbonNeed& ribbon, double share, Net& net, Pose& pose);

/// Adds the bow that a ribbon is tied in: its loops and its knot, and its tails as they are laid.
void addTiedBow(const TiedBow& bow, double width, Net& net, Pose& pose);

/// What its loops and its knot lie over, as `bowOutline`.
Polygon tiedOutline(const TiedBow& bow, double width);

/// All that a bow lies over about its knot, a convex outline; mm, x to the right and y up.
Polygon bowOutline(const BowShape& bow, double width);

/// Adds a bow at a place: x to the right, y up, z into what it is glued to.
void addBow(const BowShape& bow, double width, const Transform& place, Net& net, Pose& pose);

}  // namespace creasewright
