#pragma once

#include "base/problem.h"
#include "net/net.h"

namespace creasewright {

/// Checks that no panel goes through another anywhere on the way from flat to folded, as FoldPath
/// takes it. Parts of panels farther than a caliper and 0.05 mm (the slack of a mate) from their
/// rims must not cut, and a panel must not pass through another in the moment when both lie in one
/// plane, nor reach the target of a mate from the face it does not lie on. Panels that share a
/// crease only must not fold farther than 180 degrees; allowedContacts() lists what else may touch.
/// Stages that Net::bends declares are left out, their end states are not.
///
/// Each pair of convex parts goes through each stage in steps that are halved until a plane keeps
/// the pair apart for the whole of a step, or its motion in a step is below the tolerance. The
/// motion is bounded by its velocity half way and, as second derivatives of a chain of hinges are
/// bounded by its lengths, by half the turns squared times these lengths.
///
/// A flap that lies against a mate's target must not stick out over an edge of the target where the
/// card beyond is turned up on its face: see EdgeWatch.
///
/// Problems: PanelsCollide, one per pair of panels, for the first place on the way; LoopOpen where
/// the way cannot be followed.
Problems checkFoldPath(const Net& net, double caliper);

/// Whether checkFoldPath finds `many` problems or more; looks no farther then.
bool foldPathMeets(const Net& net, double caliper, std::size_t many);

/// Whether panels are in one another at one moment of the way, as in a bending stage; `progress` as
/// for FoldPath. False where the way cannot be followed.
bool collidesAt(const Net& net, double caliper, double progress);

}  // namespace creasewright
