#pragma once

#include "document/build.h"
#include "guide/guide.h"

namespace creasewright {

/// The steps from the stock sheet to the finished design, piece by piece; every number comes from
/// the built design. A design with problems still gets its guide. For the left hand the scores are
/// planned anew (making/score_hand.h); net, cuts and folds are the same.
Guide makeGuide(const BuiltDesign& built, Hand hand = Hand::Right);

}  // namespace creasewright
