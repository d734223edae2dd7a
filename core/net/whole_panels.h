#pragma once

#include <string_view>
#include <vector>

#include "net/net.h"

namespace creasewright {

/// What the hand calls a panel: its id without the number after `#`, by which a net tells the
/// strips of a bent panel apart.
std::string_view wholeId(std::string_view id);

/// For each panel the first one of its whole; its own index where it is no strip of a bent panel.
std::vector<int> wholePanels(const Net& net);

}  // namespace creasewright
