#include "folding/edge_meetings.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace creasewright {
namespace {

constexpr double kReach = 3;     // mm from a fold or a joint the card is held
constexpr double kTold = 5;      // mm of a seam that may stay loose at its ends
constexpr double kShortest = 1;  // mm
constexpr double kAlike = 0.99;  // cosine of the most that edges which meet differ in direction

/// A straight cut edge in space.
struct CutEdge {
  int panel = 0;
  const std::string* name = nullptr;
  Point3 a, b;
};

double awayFrom(Point3 p, Point3 a, Point3 b) {
  const Point3 along = b - a;
  const double square = dot(along, along);
  const double t = square > 0 ? std::clamp(dot(p - a, along) / square, 0.0, 1.0) : 0;
  return distance(p, a + along * t);
}

/// Whether a fold runs along the middle of an edge of a panel.
bool isFolded(const Net& net, int panel, const Segment& edge, const Pose& flat) {
  const Transform& own = flat[static_cast<std::size_t>(panel)];
  const Point3 middle = own.apply((edge.a + edge.b) / 2);
  return std::ranges::any_of(net.creases, [&](const Crease& crease) {
    if (crease.parent != panel && crease.child != panel) return false;
    const Transform& frame = flat[static_cast<std::size_t>(crease.parent)];
    return awayFrom(middle, frame.apply(crease.onParent.a), frame.apply(crease.onParent.b)) < 0.1;
  });
}

std::vector<CutEdge> cutEdges(const Net& net, const Pose& folded) {
  const Pose flat = pose(net, 0);
  std::vector<CutEdge> edges;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Panel& panel = net.panels[i];
    for (std::size_t k = 0; k < panel.outline.size(); ++k) {
      const Segment edge{panel.outline[k], panel.outline[(k + 1) % panel.outline.size()]};
      const auto index = static_cast<int>(i);
      if (length(edge) < kShortest || isFolded(net, index, edge, flat)) continue;
      edges.push_back(
          {index, &panel.edges.at(k), folded[i].apply(edge.a), folded[i].apply(edge.b)});
    }
  }
  return edges;
}

/// What leads from panel to panel near a point.
bool joined(const Net& net, const Pose& folded, int one, int other, Point3 at) {
  std::vector<int> group(net.panels.size());
  std::iota(group.begin(), group.end(), 0);
  const auto unite = [&group](int a, int b) {
    const int from = group[static_cast<std::size_t>(a)];
    std::ranges::replace(group, from, group[static_cast<std::size_t>(b)]);
  };
  for (const Crease& crease : net.creases) {
    const Transform& frame = folded[static_cast<std::size_t>(crease.parent)];
    if (awayFrom(at, frame.apply(crease.onParent.a), frame.apply(crease.onParent.b)) < kReach)
      unite(crease.parent, crease.child);
  }
  for (const Mate& mate : net.mates) {
    if (mate.method == Method::Rest) continue;
    const auto flap = static_cast<std::size_t>(mate.panel);
    const Point3 seen = folded[flap].inverse().apply(at);
    const Polygon& area = mate.patch.empty() ? net.panels[flap].outline : mate.patch;
    if (std::abs(seen.z) < kReach && locate({seen.x, seen.y}, area, kReach) != Side::Outside)
      unite(mate.panel, mate.onto);
  }
  return group[static_cast<std::size_t>(one)] == group[static_cast<std::size_t>(other)];
}

void meet(const Net& net, const Pose& folded, const CutEdge& one, const CutEdge& other,
          double caliper, std::vector<EdgeMeeting>& found) {
  const Point3 along = unit(one.b - one.a);
  if (std::abs(dot(along, unit(other.b - other.a))) < kAlike) return;
  const double c = dot(other.a - one.a, along);
  const double d = dot(other.b - one.a, along);
  const double from = std::max(0.0, std::min(c, d));
  const double to = std::min(distance(one.a, one.b), std::max(c, d));
  if (to - from < kShortest) return;
  const auto near = [&](double t) {
    return awayFrom(one.a + along * t, other.a, other.b) < caliper + 0.05;
  };
  if (!near(from) || !near(to)) return;
  EdgeMeeting meeting{one.panel, *one.name, other.panel, *other.name, to - from, 0};
  const int steps = std::max(1, static_cast<int>(to - from));
  const double step = (to - from) / steps;
  for (int i = 0; i < steps; ++i)
    if (!joined(net, folded, one.panel, other.panel, one.a + along * (from + (i + 0.5) * step)))
      meeting.loose += step;
  found.push_back(std::move(meeting));
}

bool isDeclared(const Net& net, const EdgeMeeting& m) {
  return std::ranges::any_of(
      net.openEdges,
      [&](const OpenEdges& o) {
        return (o.panel == m.panel && o.edge == m.edge && o.other == m.other &&
                o.otherEdge == m.otherEdge) ||
               (o.panel == m.other && o.edge == m.otherEdge && o.other == m.panel &&
                o.otherEdge == m.edge);
      });
}

}  // namespace

std::vector<EdgeMeeting> edgeMeetings(const Net& net, const Pose& folded, double caliper) {
  const std::vector<CutEdge> edges = cutEdges(net, folded);
  std::vector<EdgeMeeting> found;
  for (std::size_t i = 0; i < edges.size(); ++i)
    for (std::size_t k = i + 1; k < edges.size(); ++k)
      if (edges[i].panel != edges[k].panel) meet(net, folded, edges[i], edges[k], caliper, found);
  return found;
}

std::vector<EdgeMeeting> looseEdges(const Net& net, const Pose& folded, double caliper) {
  std::vector<EdgeMeeting> found = edgeMeetings(net, folded, caliper);
  std::erase_if(found, [&](const EdgeMeeting& m) { return m.loose < kTold || isDeclared(net, m); });
  return found;
}

}  // namespace creasewright
