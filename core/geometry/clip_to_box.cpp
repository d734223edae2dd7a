#include "geometry/clip_to_box.h"

namespace creasewright {

Polygon clipToBox(Polygon ring, const Bounds& box) {
  const Polygon corners{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
  for (std::size_t i = 0; i < corners.size() && !ring.empty(); ++i)
    ring = clipLeftOf(ring, corners[i], corners[(i + 1) % corners.size()]);
  return ring;
}

}  // namespace creasewright
