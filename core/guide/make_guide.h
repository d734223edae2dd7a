#pragma once

#include "document/build.h"
#include "guide/guide.h"

namespace creasewright {

/// The steps from the stock sheet to the finished design, piece by piece; every number comes from
/// the built design. A design with problems still gets its guide. For the left hand the scores are
/// planned anew (making/score_hand.h); net, cuts and folds are the same.
Guide makeGuide(const BuiltDesign& built, Hand hand = Hand::Right);

/// What is done once the pieces are scored and cut: each fold stage by itself, all that is glued,
/// put in, on and together, in the order in which makeGuide() tells it. Quick, for nothing is
/// planned.
std::vector<Step> makingSteps(const BuiltDesign& built);

}  // namespace creasewright
