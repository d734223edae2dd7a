#include "net/partings.h"

#include <algorithm>
#include <utility>

namespace creasewright {
namespace {

constexpr double kOnePlace = 1e-6;  // mm

using Interval = std::pair<double, double>;

/// A line of the net with what is asked of it again and again.
struct Line {
  Segment segment;
  Point along;  // unit
  double length;
  Bounds box;

  explicit Line(const Segment& s)
      : segment(s),
        along(unit(s.b - s.a)),
        length(creasewright::length(s)),
        box(bounds({s.a, s.b})) {}
};

/// The part of `t` that lies on `s`, as positions along `s`; empty when first >= second.
Interval shared(const Line& s, const Segment& t) {
  const Point& start = s.segment.a;
  if (std::abs(cross(s.along, t.a - start)) > kOnePlace ||
      std::abs(cross(s.along, t.b - start)) > kOnePlace)
    return {0, 0};
  const double a = dot(s.along, t.a - start);
  const double b = dot(s.along, t.b - start);
  return {std::max(0.0, std::min(a, b)), std::min(s.length, std::max(a, b))};
}

bool touch(const Bounds& a, const Bounds& b) {
  return a.low.x <= b.high.x + kOnePlace && b.low.x <= a.high.x + kOnePlace &&
         a.low.y <= b.high.y + kOnePlace && b.low.y <= a.high.y + kOnePlace;
}

/// What is left of an interval of `s` outside all creases.
void addUncreased(const Line& s, Interval whole, const std::vector<Line>& creases,
                  std::vector<Segment>& into) {
  std::vector<Interval> taken;
  for (const Line& crease : creases) {
    if (!touch(s.box, crease.box)) continue;
    const Interval common = shared(s, crease.segment);
    if (common.second - common.first > kOnePlace) taken.push_back(common);
  }
  std::ranges::sort(taken);
  const auto add = [&](double from, double to) {
    if (to - from > kOnePlace)
      into.push_back({s.segment.a + s.along * from, s.segment.a + s.along * to});
  };
  double at = whole.first;
  for (const auto& [from, to] : taken) {
    add(at, std::min(from, whole.second));
    at = std::max(at, to);
  }
  add(at, whole.second);
}

std::vector<Line> edgesOf(const Polygon& panel) {
  std::vector<Line> edges;
  for (std::size_t i = 0; i < panel.size(); ++i) {
    const Segment edge{panel[i], panel[(i + 1) % panel.size()]};
    if (length(edge) > kOnePlace) edges.emplace_back(edge);
  }
  return edges;
}

/// A panel's edges and the box about them.
struct Outline {
  Bounds box;
  std::vector<Line> edges;

  explicit Outline(const Polygon& panel) : box(bounds(panel)), edges(edgesOf(panel)) {}
};

/// Edges of panels on either side run in opposite directions.
bool runAgainst(const Line& s, const Line& t) {
  return dot(s.segment.b - s.segment.a, t.segment.b - t.segment.a) < 0;
}

/// What two panels share outside all creases.
void addBetween(const Outline& one, const Outline& other, const std::vector<Line>& creases,
                std::vector<Segment>& into) {
  for (const Line& s : one.edges) {
    if (!touch(s.box, other.box)) continue;
    for (const Line& t : other.edges) {
      if (!touch(s.box, t.box) || !runAgainst(s, t)) continue;
      const Interval common = shared(s, t.segment);
      if (common.second - common.first > kOnePlace) addUncreased(s, common, creases, into);
    }
  }
}

}  // namespace

std::vector<Segment> findPartings(const std::vector<Polygon>& panels,
                                  const std::vector<Segment>& creases) {
  const std::vector<Outline> outlines(panels.begin(), panels.end());
  const std::vector<Line> scored(creases.begin(), creases.end());
  std::vector<Segment> partings;
  for (std::size_t i = 0; i < outlines.size(); ++i)
    for (std::size_t j = i + 1; j < outlines.size(); ++j)
      if (touch(outlines[i].box, outlines[j].box))
        addBetween(outlines[i], outlines[j], scored, partings);
  return partings;
}

}  // namespace creasewright
