#include "folding/motion/needed_bends.h"

#include <optional>

#include "folding/motion/motion_check.h"

namespace creasewright {

std::vector<Bend> neededBends(const Net& net, double caliper) {
  Net tried = net;
  std::optional<std::size_t> found;  // problems with all bends, counted when first asked for
  for (std::size_t i = tried.bends.size(); i-- > 0;) {
    const Bend bend = tried.bends[i];
    tried.bends.erase(tried.bends.begin() + static_cast<std::ptrdiff_t>(i));
    const std::size_t without = checkFoldPath(tried, caliper).size();
    if (without == 0) continue;
    if (!found) found = checkFoldPath(net, caliper).size();
    if (without > *found)
      tried.bends.insert(tried.bends.begin() + static_cast<std::ptrdiff_t>(i), bend);
  }
  return tried.bends;
}

Net withNeededBends(Net net, double caliper) {
  net.bends = neededBends(net, caliper);
  return net;
}

}  // namespace creasewright
