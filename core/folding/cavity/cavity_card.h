#pragma once

#include <vector>

#include "folding/cavity/cavity_parts.h"
#include "net/piece.h"
#include "net/pose.h"

namespace creasewright {

/// The card of a folded piece as convex plane parts in the frame of the cavity's panel: middle
/// planes, flaps that lie against a target moved off it by the layers between. Openings that the
/// cavity goes through are left out. Empty when the cavity's panel does not exist.
std::vector<Piece3> cardAround(const Net& net, const Pose& folded, const Cavity& cavity,
                               double caliper);

}  // namespace creasewright
