#include "geometry/fewer_points.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace creasewright {

Polygon fewerPoints(const Polygon& ring, double tolerance) {
  if (ring.size() < 3) return {};
  const std::size_t count = ring.size();
  const auto at = [&](std::size_t i) { return ring[i % count]; };
  const auto farthest =
      std::ranges::max_element(ring, {}, [&](const Point& p) { return distance(p, ring.front()); });
  const auto across = static_cast<std::size_t>(farthest - ring.begin());
  std::vector<bool> kept(count, false);
  kept[0] = kept[across] = true;
  std::vector<std::pair<std::size_t, std::size_t>> open{{0, across}, {across, count}};
  while (!open.empty()) {
    const auto [from, to] = open.back();
    open.pop_back();
    double most = tolerance;
    std::size_t where = 0;
    for (std::size_t i = from + 1; i < to; ++i) {
      const double off = distanceToSegment(at(i), {at(from), at(to)});
      if (off <= most) continue;
      most = off;
      where = i;
    }
    if (where == 0) continue;
    kept[where] = true;
    open.emplace_back(from, where);
    open.emplace_back(where, to);
  }
  Polygon out;
  for (std::size_t i = 0; i < count; ++i)
    if (kept[i]) out.push_back(ring[i]);
  return out.size() < 3 ? Polygon() : out;
}

}  // namespace creasewright
