#pragma once

#include "base/problem.h"
#include "net/flat_net.h"
#include "net/net.h"

namespace creasewright {

/// Everything wrong with a net as it lies flat: names, outlines, overlaps, creases off their
/// panels, narrow flaps, openings outside their panel, an outline in pieces. Empty for a sound net.
/// `caliper` is the card's thickness in mm.
Problems findProblems(const Net& net, const FlatNet& flat, double caliper);

/// Smallest glue or tuck flap: max(6 mm, 10 x caliper) is common practice, no published source.
double minimumFlapWidth(double caliper);

}  // namespace creasewright
