#pragma once

#include <vector>

#include "pages/gift.h"

namespace creasewright {

/// What the hand does to the folded pieces one after the other until the gift is finished.
enum class MomentCode {
  LayInside,  ///< an extra goes into the box, under or round the product
  PutIn,      ///< the product, where it does not go in on the way of folding
  Close,      ///< loose pieces are put on
  AddExtra    ///< an extra goes onto the box or round it
};

struct GiftMoment {
  MomentCode code = MomentCode::PutIn;
  int extra = -1;  ///< index into Design::extras; -1 = none
};

/// In the order of doing: hosts before their guests. What is no part of the gift's picture has
/// none.
std::vector<GiftMoment> giftMoments(const BuiltDesign& built);

/// The gift when so many of the moments are done: 1.5 is the middle of the second.
GiftState stateAfter(const BuiltDesign& built, const std::vector<GiftMoment>& moments, double done);

}  // namespace creasewright
