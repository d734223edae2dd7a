#include "folding/motion/crease_path.h"

#include <algorithm>

namespace creasewright {

CreaseTree::CreaseTree(const Net& net) : up_(net.panels.size()) {
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    Link& link = up_.at(static_cast<std::size_t>(crease.child));
    if (!crease.loop && link.crease < 0) link = {static_cast<int>(i), crease.parent};
  }
}

std::vector<int> CreaseTree::path(int from, int to) const {
  std::vector<int> up;
  std::vector<int> down;
  // Parents come before their children, so the panel with the larger index is never above.
  while (from != to) {
    const Link& link = up_[static_cast<std::size_t>(std::max(from, to))];
    if (link.crease < 0) break;
    (from > to ? up : down).push_back(link.crease);
    (from > to ? from : to) = link.parent;
  }
  up.insert(up.end(), down.rbegin(), down.rend());
  return up;
}

std::vector<int> creasePath(const Net& net, int from, int to) {
  return CreaseTree(net).path(from, to);
}

}  // namespace creasewright
