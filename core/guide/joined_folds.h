#pragma once

#include <vector>

#include "guide/guide.h"
#include "net/net.h"

namespace creasewright {

/// Fold steps of one piece in their order; stages that only get flaps ready (nothing is held, bent
/// or opened in them) become one step with the stage that closes with these flaps, as far as one
/// picture has room for the arrows. Product and extras must not come in between.
std::vector<Step> joinedFolds(const Net& net, std::vector<Step> folds);

}  // namespace creasewright
