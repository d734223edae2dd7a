#pragma once

#include <vector>

#include "net/net.h"

namespace creasewright {

/// The tree of a net's creases, to find many ways through it.
class CreaseTree {
 public:
  explicit CreaseTree(const Net& net);
  /// The tree creases on the way from one panel to another, in that order: indices into
  /// Net::creases.
  [[nodiscard]] std::vector<int> path(int from, int to) const;

 private:
  struct Link {
    int crease = -1;  // none above the root
    int parent = -1;
  };
  std::vector<Link> up_;  // by panel
};

/// CreaseTree(net).path(from, to).
std::vector<int> creasePath(const Net& net, int from, int to);

}  // namespace creasewright
