#include "folding/motion/needed_bends.h"

#include "folding/motion/motion_check.h"

namespace creasewright {

std::vector<Bend> neededBends(const Net& net, double caliper, std::size_t found) {
  Net tried = net;
  for (std::size_t i = tried.bends.size(); i-- > 0;) {
    const Bend bend = tried.bends[i];
    const auto place = static_cast<std::ptrdiff_t>(i);
    tried.bends.erase(tried.bends.begin() + place);
    if (foldPathMeets(tried, caliper, found + 1))
      tried.bends.insert(tried.bends.begin() + place, bend);
  }
  return tried.bends;
}

Net withNeededBends(Net net, double caliper) {
  if (!net.bends.empty()) net.bends = neededBends(net, caliper, checkFoldPath(net, caliper).size());
  return net;
}

}  // namespace creasewright
