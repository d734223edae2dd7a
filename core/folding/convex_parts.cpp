#include "folding/convex_parts.h"

#include <algorithm>
#include <optional>

#include "folding/keyhole.h"
#include "folding/triangulate.h"

namespace creasewright {
namespace {

constexpr double kStraight = 1e-9;  // mm2

bool isConvex(const Polygon& ring) {
  const std::size_t n = ring.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Point a = ring[i];
    const Point b = ring[(i + 1) % n];
    if (cross(b - a, ring[(i + 2) % n] - b) < -kStraight) return false;
  }
  return true;
}

/// Both polygons as one across an edge they share, when that is convex.
std::optional<Polygon> joined(const Polygon& one, const Polygon& other) {
  for (std::size_t i = 0; i < one.size(); ++i) {
    const Point a = one[i];
    const Point b = one[(i + 1) % one.size()];
    for (std::size_t k = 0; k < other.size(); ++k) {
      if (!(other[k] == b) || !(other[(k + 1) % other.size()] == a)) continue;
      Polygon both;
      for (std::size_t j = 1; j <= one.size(); ++j) both.push_back(one[(i + j) % one.size()]);
      for (std::size_t j = 2; j < other.size(); ++j) both.push_back(other[(k + j) % other.size()]);
      if (isConvex(both)) return both;
    }
  }
  return std::nullopt;
}

bool areApart(const Bounds& a, const Bounds& b) {
  return a.high.x < b.low.x || b.high.x < a.low.x || a.high.y < b.low.y || b.high.y < a.low.y;
}

/// Joins each part with the first that fits, until none does (after Hertel and Mehlhorn: never more
/// than four times the fewest parts).
void joinParts(std::vector<Polygon>& parts) {
  std::vector<Bounds> boxes;
  for (const Polygon& part : parts) boxes.push_back(bounds(part));
  for (std::size_t i = 0; i < parts.size(); ++i) {
    for (std::size_t k = i + 1; k < parts.size(); ++k) {
      if (areApart(boxes[i], boxes[k])) continue;  // most are
      std::optional<Polygon> both = joined(parts[i], parts[k]);
      if (!both) continue;
      parts[i] = std::move(*both);
      boxes[i] = bounds(parts[i]);
      parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(k));
      boxes.erase(boxes.begin() + static_cast<std::ptrdiff_t>(k));
      k = i;  // the larger part may join with one passed before
    }
  }
}

}  // namespace

std::vector<Polygon> convexParts(const Panel& panel) {
  if (panel.openings.empty() && isConvex(panel.outline)) return {panel.outline};
  std::vector<Polygon> parts;
  for (const Area& area : cutOut(region(panel.outline), panel.openings))
    for (const auto& t : triangulate(area.holes.empty() ? area.outer : keyhole(area)))
      parts.push_back({t[0], t[1], t[2]});
  joinParts(parts);
  return parts;
}

}  // namespace creasewright
