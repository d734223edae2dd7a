#include "net/partings.h"

#include <algorithm>
#include <utility>

namespace creasewright {
namespace {

constexpr double kSamePlace = 1e-6;  // mm

using Interval = std::pair<double, double>;

/// The part of `t` that lies on `s`, as positions along `s`; empty when first >= second.
Interval shared(const Segment& s, const Segment& t) {
  const Point along = unit(s.b - s.a);
  if (std::abs(cross(along, t.a - s.a)) > kSamePlace ||
      std::abs(cross(along, t.b - s.a)) > kSamePlace)
    return {0, 0};
  const double a = dot(along, t.a - s.a);
  const double b = dot(along, t.b - s.a);
  return {std::max(0.0, std::min(a, b)), std::min(length(s), std::max(a, b))};
}

bool touch(const Bounds& a, const Bounds& b) {
  return a.low.x <= b.high.x + kSamePlace && b.low.x <= a.high.x + kSamePlace &&
         a.low.y <= b.high.y + kSamePlace && b.low.y <= a.high.y + kSamePlace;
}

/// What is left of an interval of `s` outside all creases.
void addUncreased(const Segment& s, Interval whole, const std::vector<Segment>& creases,
                  std::vector<Segment>& into) {
  std::vector<Interval> taken;
  for (const Segment& crease : creases) taken.push_back(shared(s, crease));
  std::ranges::sort(taken);
  const Point along = unit(s.b - s.a);
  const auto add = [&](double from, double to) {
    if (to - from > kSamePlace) into.push_back({s.a + along * from, s.a + along * to});
  };
  double at = whole.first;
  for (const auto& [from, to] : taken) {
    if (to - from <= kSamePlace) continue;
    add(at, std::min(from, whole.second));
    at = std::max(at, to);
  }
  add(at, whole.second);
}

std::vector<Segment> edgesOf(const Polygon& panel) {
  std::vector<Segment> edges;
  for (std::size_t i = 0; i < panel.size(); ++i) {
    const Segment edge{panel[i], panel[(i + 1) % panel.size()]};
    if (length(edge) > kSamePlace) edges.push_back(edge);
  }
  return edges;
}

}  // namespace

std::vector<Segment> findPartings(const std::vector<Polygon>& panels,
                                  const std::vector<Segment>& creases) {
  std::vector<Bounds> boxes;
  std::vector<std::vector<Segment>> edges;
  for (const Polygon& panel : panels) {
    boxes.push_back(bounds(panel));
    edges.push_back(edgesOf(panel));
  }
  std::vector<Segment> partings;
  for (std::size_t i = 0; i < panels.size(); ++i) {
    for (std::size_t j = i + 1; j < panels.size(); ++j) {
      if (!touch(boxes[i], boxes[j])) continue;
      for (const Segment& s : edges[i]) {
        for (const Segment& t : edges[j]) {
          const Interval common = shared(s, t);
          // Edges of panels on either side run in opposite directions.
          if (common.second - common.first > kSamePlace && dot(s.b - s.a, t.b - t.a) < 0)
            addUncreased(s, common, creases, partings);
        }
      }
    }
  }
  return partings;
}

}  // namespace creasewright
