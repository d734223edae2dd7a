#pragma once

#include <algorithm>

#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// How far something reaches along a direction, mm.
struct Reach {
  double low = 1e9;
  double high = -1e9;

  void take(double at) {
    low = std::min(low, at);
    high = std::max(high, at);
  }
  /// All panels of a net in a pose that stands at `place`.
  void take(const Net& net, const Pose& pose, const Transform& place, Point3 along) {
    for (std::size_t i = 0; i < net.panels.size(); ++i)
      for (const Point& corner : net.panels[i].outline)
        take(dot(place.after(pose[i]).apply(corner), along));
  }
  [[nodiscard]] double middle() const { return (low + high) / 2; }
};

}  // namespace creasewright
