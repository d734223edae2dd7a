#include "folding/motion/crease_path.h"

#include <algorithm>

namespace creasewright {

std::vector<int> creasePath(const Net& net, int from, int to) {
  std::vector<int> up;
  std::vector<int> down;
  // Parents come before their children, so the panel with the larger index is never above.
  while (from != to) {
    const Crease* crease = net.creaseOf(std::max(from, to));
    if (crease == nullptr) break;
    const int index = static_cast<int>(crease - net.creases.data());
    (from > to ? up : down).push_back(index);
    (from > to ? from : to) = crease->parent;
  }
  up.insert(up.end(), down.rbegin(), down.rend());
  return up;
}

}  // namespace creasewright
