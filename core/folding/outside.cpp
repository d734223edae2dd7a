#include "folding/outside.h"

#include <algorithm>
#include <array>
#include <limits>

namespace creasewright {

CavitySize measureOutside(const Net& net, const Pose& folded, const Cavity& cavity,
                          double caliper) {
  const auto owner = net.find(cavity.panel);
  if (!owner) return {};
  const Transform toCavity = folded[static_cast<std::size_t>(*owner)].inverse();
  std::array<double, 3> low;
  std::array<double, 3> high;
  low.fill(std::numeric_limits<double>::infinity());
  high.fill(-std::numeric_limits<double>::infinity());
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Transform place = toCavity.after(folded[i]);
    for (const Point& corner : net.panels[i].outline) {
      const Point3 p = place.apply(corner);
      const std::array<double, 3> at{p.x, p.y, p.z};
      for (std::size_t k = 0; k < 3; ++k) {
        low.at(k) = std::min(low.at(k), at.at(k));
        high.at(k) = std::max(high.at(k), at.at(k));
      }
    }
  }
  const auto size = [&](std::size_t axis) {
    const auto k = static_cast<std::size_t>(cavity.axes.at(axis));
    return high.at(k) - low.at(k) + caliper;
  };
  return {size(0), size(1), size(2)};
}

}  // namespace creasewright
