#include "folding/cavity/cavity_card.h"

#include <algorithm>
#include <optional>

#include "folding/keyhole.h"
#include "folding/layers.h"
#include "folding/triangulate.h"
#include "geometry/region.h"

namespace creasewright {
namespace {

bool isConvex(const Polygon& ring) {
  const std::size_t n = ring.size();
  for (std::size_t i = 0; i < n; ++i)
    if (cross(ring[(i + 1) % n] - ring[i], ring[(i + 2) % n] - ring[(i + 1) % n]) < 0) return false;
  return true;
}

std::vector<Polygon> convexParts(const Polygon& outline) {
  if (isConvex(outline)) return {outline};
  std::vector<Polygon> parts;
  for (const auto& triangle : triangulate(outline))
    parts.push_back({triangle.begin(), triangle.end()});
  return parts;
}

Polygon rectangleAbout(const Polygon& shape) {
  const auto [low, high] = bounds(shape);
  return {low, {high.x, low.y}, high, {low.x, high.y}};
}

/// What of a panel is in the way: its openings only let the cavity through where it says so.
std::vector<Polygon> solidParts(const Panel& panel, const Cavity& cavity) {
  if (panel.openings.empty() || std::ranges::count(cavity.through, panel.id) == 0)
    return convexParts(panel.outline);
  std::vector<Polygon> holes = panel.openings;
  if (cavity.round)
    for (Polygon& hole : holes) hole = rectangleAbout(hole);
  std::vector<Polygon> parts;
  for (const Area& area : cutOut(region(panel.outline), holes))
    for (const auto& triangle : triangulate(keyhole(area)))
      parts.push_back({triangle.begin(), triangle.end()});
  return parts;
}

}  // namespace

std::vector<Piece3> cardAround(const Net& net, const Pose& folded, const Cavity& cavity,
                               double caliper) {
  const std::optional<int> holder = net.find(cavity.panel);
  if (!holder) return {};
  const Transform toFrame = folded[static_cast<std::size_t>(*holder)].inverse();
  const std::vector<Point3> offsets = layerOffsets(net, folded, caliper, caliper + 0.05);
  std::vector<Piece3> pieces;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Transform place = toFrame.after(Transform::translation(offsets[i])).after(folded[i]);
    for (const Polygon& part : solidParts(net.panels[i], cavity)) {
      Piece3& piece = pieces.emplace_back();
      for (const Point& corner : part) piece.push_back(coordinates(place.apply(corner)));
    }
  }
  return pieces;
}

}  // namespace creasewright
