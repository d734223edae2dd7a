#pragma once

#include <string>
#include <vector>

#include "net/net.h"

namespace creasewright {

/// Panels as words tell them: one by one, or all of one kind at once.
struct PanelGroup {
  std::string kind;  ///< the last name of their paths without its number; empty for one alone
  std::vector<int> panels;
};

/// Three and more of one kind are told together, but only when they are all there are of it; in the
/// order of `panels`.
std::vector<PanelGroup> panelGroups(const Net& net, const std::vector<int>& panels);

}  // namespace creasewright
