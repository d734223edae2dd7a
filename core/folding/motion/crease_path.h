#pragma once

#include <vector>

#include "net/net.h"

namespace creasewright {

/// The tree creases on the way from one panel to another, in that order: indices into Net::creases.
std::vector<int> creasePath(const Net& net, int from, int to);

}  // namespace creasewright
