#include "core/guide/plane_faces.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace creasewright::testing {
namespace {

constexpr double kMerge = 5e-6;  // mm

struct Graph {
  std::vector<Point> points;
  std::set<std::pair<int, int>> edges;  // both ways

  int point(Point p) {
    for (std::size_t i = 0; i < points.size(); ++i)
      if (distance(points[i], p) <= kMerge) return static_cast<int>(i);
    points.push_back(p);
    return static_cast<int>(points.size()) - 1;
  }
};

/// Where `t` meets `s`, as places along `s`.
void addMeetings(const Segment& s, const Segment& t, std::vector<double>& places) {
  const Point along = unit(s.b - s.a);
  for (const Point end : {t.a, t.b})
    if (distanceToSegment(end, s) <= kMerge) places.push_back(dot(along, end - s.a));
  const double a = cross(along, t.a - s.a);
  const double b = cross(along, t.b - s.a);
  if ((a > 0) == (b > 0) || std::abs(a - b) < 1e-12) return;
  const double at = dot(along, t.a + (t.b - t.a) * (a / (a - b)) - s.a);
  if (at > -kMerge && at < length(s) + kMerge) places.push_back(at);
}

Graph graphOf(const std::vector<Segment>& segments) {
  Graph graph;
  for (const Segment& s : segments) {
    std::vector<double> places{0, length(s)};
    for (const Segment& t : segments)
      if (&t != &s) addMeetings(s, t, places);
    std::ranges::sort(places);
    const Point along = unit(s.b - s.a);
    int last = graph.point(s.a);
    for (const double at : places) {
      const int next = graph.point(s.a + along * at);
      if (next == last) continue;
      graph.edges.insert({last, next});
      graph.edges.insert({next, last});
      last = next;
    }
  }
  return graph;
}

}  // namespace

PlaneFaces planeFaces(const std::vector<Segment>& segments) {
  Graph graph = graphOf(segments);
  std::vector<std::vector<int>> around(graph.points.size());
  for (const auto& [a, b] : graph.edges) around[static_cast<std::size_t>(a)].push_back(b);
  const auto at = [&](int i) { return graph.points[static_cast<std::size_t>(i)]; };
  for (std::size_t i = 0; i < around.size(); ++i)
    std::ranges::sort(around[i], {}, [&](int other) {
      const Point d = at(other) - graph.points[i];
      return std::atan2(d.y, d.x);
    });
  // Face on the left: at each corner the next edge clockwise from the way back.
  const auto next = [&](std::pair<int, int> edge) {
    const std::vector<int>& fan = around[static_cast<std::size_t>(edge.second)];
    const auto back = std::ranges::find(fan, edge.first) - fan.begin();
    const auto count = static_cast<std::ptrdiff_t>(fan.size());
    return std::pair{edge.second, fan[static_cast<std::size_t>((back + count - 1) % count)]};
  };
  PlaneFaces faces;
  std::vector<std::pair<std::pair<int, int>, int>> faceOf;
  std::set<std::pair<int, int>> seen;
  for (const auto& start : graph.edges) {
    if (seen.contains(start)) continue;
    Polygon outline;
    for (auto edge = start; seen.insert(edge).second; edge = next(edge)) {
      outline.push_back(at(edge.first));
      faceOf.push_back({edge, static_cast<int>(faces.outlines.size())});
    }
    faces.outlines.push_back(std::move(outline));
  }
  std::ranges::sort(faceOf);
  for (const auto& [edge, face] : faceOf) {
    const auto twin = std::ranges::lower_bound(faceOf, std::pair{edge.second, edge.first}, {},
                                               [](const auto& entry) { return entry.first; });
    faces.edges.push_back({at(edge.first), at(edge.second), face, twin->second});
  }
  return faces;
}

}  // namespace creasewright::testing
