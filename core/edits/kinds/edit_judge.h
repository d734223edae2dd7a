#pragma once

#include "base/problem.h"
#include "net/flat_net.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// A net, flat and folded, and what it does not hold.
struct JudgedNet {
  FlatNet flat;
  Pose folded;
  Problems problems;
};

/// An edit may not add to a net's problems. `caliper` in mm.
JudgedNet judgeNet(const Net& net, double caliper);

/// Whether one of `now` is none of `before`, by its code and place.
bool isWorse(const Problems& before, const Problems& now);

/// Whether the folds on a panel lie on the edges of `now` wherever they lay on those of `before`,
/// which is the same panel before a cut: a cut across a score would leave a hole where the card
/// folds.
bool keepsFolds(const Net& net, int panel, const Polygon& before, const Polygon& now);

}  // namespace creasewright
