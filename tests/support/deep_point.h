#pragma once

#include <algorithm>

#include "geometry/polygon.h"
#include "geometry/region.h"

namespace creasewright::testing {

/// The point of a panel that lies farthest from its edges, of a grid of points.
inline Point deepPoint(const Polygon& panel) {
  const Bounds box = bounds(panel);
  constexpr int kPoints = 40;
  Point best = panel.front();
  double deepest = -1;
  for (int i = 1; i < kPoints; ++i)
    for (int k = 1; k < kPoints; ++k) {
      const Point p{box.low.x + box.width() * i / kPoints, box.low.y + box.height() * k / kPoints};
      if (locate(p, panel) != Side::Inside) continue;
      double near = 1e9;
      for (std::size_t e = 0; e < panel.size(); ++e) {
        const Point a = panel[e];
        const Point way = panel[(e + 1) % panel.size()] - a;
        const double share = std::clamp(dot(p - a, way) / dot(way, way), 0.0, 1.0);
        near = std::min(near, distance(p, a + way * share));
      }
      if (near > deepest) deepest = near, best = p;
    }
  return best;
}

}  // namespace creasewright::testing
