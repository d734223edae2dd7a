#pragma once

#include "extras/extra_kind.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// Adds a ribbon round the box and its bow as panels that lie just off the faces.
void addRibbon(const RibbonNeed& ribbon, Net& net, Pose& pose);

}  // namespace creasewright
