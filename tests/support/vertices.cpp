#include "support/vertices.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace creasewright {
namespace {

constexpr double kSamePlace = 1e-4;  // mm

double degreesOf(Point direction) {
  const double angle = std::atan2(direction.y, direction.x) * 180 / std::numbers::pi;
  return angle < 0 ? angle + 360 : angle;
}

/// Degrees of card that a panel has about a point: its corner there, 180 on an edge, else 0.
double cardAbout(Point p, const Polygon& outline) {
  const std::size_t n = outline.size();
  for (std::size_t i = 0; i < n; ++i) {
    if (distance(outline[i], p) > kSamePlace) continue;
    const double from = degreesOf(outline[(i + 1) % n] - outline[i]);
    const double to = degreesOf(outline[(i + n - 1) % n] - outline[i]);
    return to < from ? to - from + 360 : to - from;
  }
  return locate(p, outline, kSamePlace) == Side::Boundary ? 180 : 0;
}

InteriorVertex vertexAt(Point p, const FlatNet& flat) {
  std::vector<std::pair<double, int>> around;
  for (std::size_t i = 0; i < flat.creases.size(); ++i) {
    const Segment& line = flat.creases[i];
    if (distance(line.a, p) < kSamePlace)
      around.emplace_back(degreesOf(line.b - line.a), static_cast<int>(i));
    if (distance(line.b, p) < kSamePlace)
      around.emplace_back(degreesOf(line.a - line.b), static_cast<int>(i));
  }
  std::ranges::sort(around);
  InteriorVertex vertex{p, {}, {}};
  for (std::size_t i = 0; i < around.size(); ++i) {
    const double next = i + 1 < around.size() ? around[i + 1].first : around[0].first + 360;
    vertex.creases.push_back(around[i].second);
    vertex.sectors.push_back(next - around[i].first);
  }
  return vertex;
}

}  // namespace

double InteriorVertex::kawasakiExcess() const {
  double sum = 0;
  for (std::size_t i = 0; i < sectors.size(); i += 2) sum += sectors[i];
  return sum - 180;
}

std::vector<InteriorVertex> interiorVertices(const Net& net, const FlatNet& flat) {
  std::vector<InteriorVertex> found;
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    for (const Point p : {flat.creases[i].a, flat.creases[i].b}) {
      const auto known = [p](const InteriorVertex& v) { return distance(v.at, p) < kSamePlace; };
      if (std::ranges::any_of(found, known)) continue;
      double card = 0;
      std::size_t panels = 0;
      for (const Polygon& outline : flat.panels) {
        const double own = cardAbout(p, outline);
        card += own;
        panels += own > 0 ? 1 : 0;
      }
      InteriorVertex vertex = vertexAt(p, flat);
      // As many creases as panels: no cut reaches the point.
      if (card > 360 - 1e-3 && vertex.creases.size() == panels) found.push_back(std::move(vertex));
    }
  }
  return found;
}

}  // namespace creasewright
