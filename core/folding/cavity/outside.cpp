#include "folding/cavity/outside.h"

#include <algorithm>
#include <limits>

namespace creasewright {

CavityBox outsideBox(const Net& net, const Pose& folded, const Cavity& cavity, double caliper) {
  const auto owner = net.find(cavity.panel);
  if (!owner) return {};
  const Transform toCavity = folded[static_cast<std::size_t>(*owner)].inverse();
  constexpr double kFar = std::numeric_limits<double>::infinity();
  CavityBox box{{kFar, kFar, kFar}, {-kFar, -kFar, -kFar}};
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Transform place = toCavity.after(folded[i]);
    for (const Point& corner : net.panels[i].outline) {
      const Point3 p = place.apply(corner);
      box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), std::min(box.low.z, p.z)};
      box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), std::max(box.high.z, p.z)};
    }
  }
  const Point3 half{caliper / 2, caliper / 2, caliper / 2};
  return {box.low - half, box.high + half};
}

CavitySize measureOutside(const Net& net, const Pose& folded, const Cavity& cavity,
                          double caliper) {
  return sizeAlong(cavity, outsideBox(net, folded, cavity, caliper));
}

}  // namespace creasewright
