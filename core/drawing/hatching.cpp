#include "drawing/hatching.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "units/angle.h"

namespace creasewright {
namespace {

/// Where the line `across == at` meets the rings, as positions along the line, sorted.
std::vector<double> crossings(const std::vector<Polygon>& rings, Point along, Point across,
                              double at) {
  std::vector<double> found;
  for (const Polygon& ring : rings) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point a = ring[i];
      const Point b = ring[(i + 1) % ring.size()];
      const double da = dot(a, across) - at;
      const double db = dot(b, across) - at;
      // Half open, so that a line through a corner meets it once or twice, never an odd number.
      if ((da < 0) == (db < 0)) continue;
      const double share = da / (da - db);
      found.push_back(dot(a, along) + share * (dot(b, along) - dot(a, along)));
    }
  }
  std::sort(found.begin(), found.end());
  return found;
}

}  // namespace

std::vector<Segment> hatch(const std::vector<Polygon>& rings, double spacing, double degrees) {
  constexpr double kShortest = 0.01;
  const double turn = Angle::degrees(degrees).radians();
  const Point along{std::cos(turn), std::sin(turn)};
  const Point across = turnLeft(along);
  double low = std::numeric_limits<double>::infinity();
  double high = -low;
  for (const Polygon& ring : rings) {
    for (const Point p : ring) {
      low = std::min(low, dot(p, across));
      high = std::max(high, dot(p, across));
    }
  }
  std::vector<Segment> lines;
  if (!(low <= high) || !(spacing > 0)) return lines;
  for (double step = std::ceil(low / spacing); step * spacing <= high; ++step) {
    const double at = step * spacing;
    const std::vector<double> ends = crossings(rings, along, across, at);
    for (std::size_t i = 0; i + 1 < ends.size(); i += 2) {
      if (ends[i + 1] - ends[i] < kShortest) continue;
      lines.push_back({along * ends[i] + across * at, along * ends[i + 1] + across * at});
    }
  }
  return lines;
}

}  // namespace creasewright
