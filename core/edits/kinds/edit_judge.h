#pragma once

#include "base/problem.h"
#include "net/net.h"

namespace creasewright {

/// What a net does not hold, flat and folded: an edit may not add to it. `caliper` in mm.
Problems judgeNet(const Net& net, double caliper);

/// Whether one of `now` is none of `before`, by its code and place.
bool isWorse(const Problems& before, const Problems& now);

/// Whether the folds on a panel lie on the edges of `now` wherever they lay on those of `before`,
/// which is the same panel before a cut: a cut across a score would leave a hole where the card
/// folds.
bool keepsFolds(const Net& net, int panel, const Polygon& before, const Polygon& now);

}  // namespace creasewright
