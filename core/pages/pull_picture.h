#pragma once

#include "extras/extra_kind.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// Adds a ribbon pull through a panel, `placed` in the picture: its loop outside, which grows with
/// `share` to 1, and its ends inside.
void addPull(const RibbonNeed& ribbon, const Panel& panel, const Transform& placed, double share,
             Net& net, Pose& pose);

}  // namespace creasewright
