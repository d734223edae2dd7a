#include "folding/motion/joined_edges.h"

#include <cmath>
#include <numbers>

#include "folding/index.h"
#include "folding/motion/allowed_contacts.h"

namespace creasewright {
namespace {

void addCreases(const Net& net, std::vector<JoinedEdge>& edges) {
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    const int index = static_cast<int>(i);
    edges.push_back({crease.parent, crease.child, crease.parent, crease.onParent, index, 0});
    edges.push_back({crease.child, crease.parent, crease.parent, crease.onParent, index, 0});
  }
}

/// A flap glued along its target's rim makes its own crease an edge of both.
void addSeams(const Net& net, std::vector<JoinedEdge>& edges) {
  for (const Mate& mate : net.mates) {
    const Crease* own = net.creaseOf(mate.panel);
    if (mate.method != Method::Glue || !mate.rim || own == nullptr) continue;
    if (own->parent == mate.onto) continue;
    const Segment line{{0, 0}, {length(own->onParent), 0}};
    const int stage = meetingStage(net, mate.panel, mate.onto);
    edges.push_back({mate.onto, own->parent, mate.panel, line, -1, stage});
  }
}

}  // namespace

std::vector<JoinedEdge> joinedEdges(const Net& net) {
  std::vector<JoinedEdge> edges;
  addCreases(net, edges);
  addSeams(net, edges);
  return edges;
}

PlacedEdge placedEdge(const Net& net, const JoinedEdge& edge, const Pose& pose) {
  constexpr double kBeside = 0.01;  // mm
  const Transform toPanel = pose[at(edge.panel)].inverse().after(pose[at(edge.frame)]);
  const Point3 a = toPanel.apply(edge.line.a);
  const Point3 b = toPanel.apply(edge.line.b);
  PlacedEdge placed{{a.x, a.y}, unit(Point{b.x - a.x, b.y - a.y}), {}, length(edge.line)};
  placed.outward = {placed.along.y, -placed.along.x};
  const Point beside = placed.from + placed.along * (placed.length / 2) + placed.outward * kBeside;
  if (locate(beside, net.panels[at(edge.panel)].outline) == Side::Inside) {
    placed.from = {b.x, b.y};
    placed.along = placed.along * -1;
    placed.outward = placed.outward * -1;
  }
  return placed;
}

double turnAt(const Net& net, const JoinedEdge& edge, const Pose& pose,
              const std::vector<Angle>& angles) {
  if (edge.crease >= 0) return angles[at(edge.crease)].degrees();
  const PlacedEdge placed = placedEdge(net, edge, pose);
  const Transform toPanel = pose[at(edge.panel)].inverse().after(pose[at(edge.neighbour)]);
  const Point3 middle = toPanel.apply(centroid(net.panels[at(edge.neighbour)].outline));
  const double out = dot(Point{middle.x, middle.y} - placed.from, placed.outward);
  return std::atan2(middle.z, out) * 180 / std::numbers::pi;
}

}  // namespace creasewright
