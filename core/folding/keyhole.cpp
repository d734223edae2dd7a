#include "folding/keyhole.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace creasewright {
namespace {

bool crosses(Point a, Point b, Point c, Point d) {
  const auto side = [](Point p, Point q, Point r) { return cross(q - p, r - p); };
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

bool crossesRing(Point a, Point b, const Polygon& ring) {
  for (std::size_t i = 0; i < ring.size(); ++i)
    if (crosses(a, b, ring[i], ring[(i + 1) % ring.size()])) return true;
  return false;
}

struct Bridge {
  std::size_t hole;
  std::size_t onRing;
  std::size_t onHole;
};

/// The shortest bridge from `ring` to one of the holes that crosses nothing.
std::optional<Bridge> shortestBridge(const Polygon& ring, const std::vector<Polygon>& holes) {
  std::optional<Bridge> best;
  double shortest = std::numeric_limits<double>::infinity();
  for (std::size_t h = 0; h < holes.size(); ++h) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      for (std::size_t j = 0; j < holes[h].size(); ++j) {
        const double reach = distance(ring[i], holes[h][j]);
        if (reach >= shortest || crossesRing(ring[i], holes[h][j], ring)) continue;
        const auto blocks = [&](const Polygon& hole) {
          return crossesRing(ring[i], holes[h][j], hole);
        };
        if (std::any_of(holes.begin(), holes.end(), blocks)) continue;
        shortest = reach;
        best = {h, i, j};
      }
    }
  }
  return best;
}

}  // namespace

Polygon keyhole(const Area& area) {
  Polygon ring = area.outer;
  std::vector<Polygon> holes = area.holes;
  while (const std::optional<Bridge> bridge = shortestBridge(ring, holes)) {
    const Polygon& hole = holes[bridge->hole];
    Polygon way;
    for (std::size_t k = 0; k <= hole.size(); ++k)
      way.push_back(hole[(bridge->onHole + k) % hole.size()]);
    way.push_back(ring[bridge->onRing]);
    ring.insert(ring.begin() + static_cast<std::ptrdiff_t>(bridge->onRing) + 1, way.begin(),
                way.end());
    holes.erase(holes.begin() + static_cast<std::ptrdiff_t>(bridge->hole));
  }
  return ring;
}

}  // namespace creasewright
