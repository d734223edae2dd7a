#include "folding/surfaces/scene_parts.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "folding/layers.h"
#include "folding/surfaces/intervals.h"

namespace creasewright {
namespace {

void addPanel(const Panel& panel, const Transform& frame, Point3 layer, int index,
              SceneParts& parts) {
  parts.plates.push_back({frame, cutOut(region(panel.outline), panel.openings), layer, index});
}

/// The share of `edge` that runs along `crease`.
Interval shared(const Segment& edge, const Segment& crease) {
  const double size = length(edge);
  const Point along = unit(edge.b - edge.a);
  for (const Point end : {crease.a, crease.b})
    if (std::abs(cross(along, end - edge.a)) > 1e-6) return {0, 0};
  const double a = dot(along, crease.a - edge.a) / size;
  const double b = dot(along, crease.b - edge.a) / size;
  return {std::min(a, b), std::max(a, b)};
}

/// Where a crease lies in its child's own frame. `flat` is the flat pose: there a loop's child lies
/// beyond the crease as well.
Segment onChild(const Crease& crease, const Pose& flat) {
  if (!crease.loop) return {{0, 0}, {length(crease.onParent), 0}};
  const Transform seen = flat[crease.child].inverse().after(flat[crease.parent]);
  const Point3 a = seen.apply(crease.onParent.a);
  const Point3 b = seen.apply(crease.onParent.b);
  return {{a.x, a.y}, {b.x, b.y}};
}

void addOpenEdges(const Net& net, const Pose& flat, const Transform& frame, int index,
                  SceneParts& parts) {
  std::vector<Segment> creases;
  for (const Crease& crease : net.creases) {
    if (crease.parent == index) creases.push_back(crease.onParent);
    if (crease.child == index) creases.push_back(onChild(crease, flat));
  }
  const Polygon& outline = net.panels[index].outline;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Segment edge{outline[i], outline[(i + 1) % outline.size()]};
    if (length(edge) < 1e-6) continue;
    std::vector<Interval> taken;
    for (const Segment& crease : creases) taken.push_back(shared(edge, crease));
    for (const Interval& part : without(std::move(taken), 1e-6)) {
      const Point along = edge.b - edge.a;
      parts.edges.push_back({frame.apply(edge.a + along * part.from),
                             frame.apply(edge.a + along * part.to),
                             {index, -1},
                             false});
    }
  }
}

void addRun(const std::vector<Point>& run, bool closed, const Transform& frame, int index,
            SceneParts& parts) {
  for (std::size_t i = 0; i + (closed ? 0 : 1) < run.size(); ++i)
    parts.edges.push_back(
        {frame.apply(run[i]), frame.apply(run[(i + 1) % run.size()]), {index, -1}, false});
}

/// A scored fold always shows; where card bends without a score only its outline does.
void addCrease(const Crease& crease, const Pose& pose, Point3 towardsEye, SceneParts& parts) {
  const bool scored = crease.kind != CreaseKind::Flat;
  const bool outline =
      dot(pose[crease.parent].normal(), towardsEye) * dot(pose[crease.child].normal(), towardsEye) <
      0;
  if (!scored && !outline) return;
  const Transform& frame = pose[crease.parent];
  parts.edges.push_back({frame.apply(crease.onParent.a),
                         frame.apply(crease.onParent.b),
                         {crease.parent, crease.child},
                         scored});
}

void addNet(const Net& net, const Pose& pose, Point3 towardsEye, SceneParts& parts) {
  const std::vector<Point3> layers = layerOffsets(net, pose, 1, 1e-4);
  const Pose flat = creasewright::pose(net, 0.0);
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const int index = static_cast<int>(i);
    addPanel(net.panels[i], pose[i], layers[i], index, parts);
    addOpenEdges(net, flat, pose[i], index, parts);
    for (const Polygon& opening : net.panels[i].openings)
      addRun(opening, true, pose[i], index, parts);
  }
  for (const Slit& slit : net.slits) addRun(slit.line, false, pose[slit.panel], slit.panel, parts);
  for (const Crease& crease : net.creases) addCrease(crease, pose, towardsEye, parts);
}

struct SolidEdge {
  Point3 a;
  Point3 b;
  std::vector<Point3> normals;
  int front = -1;  // plate of a face towards the eye
};

using EdgeKey = std::tuple<long long, long long, long long, long long, long long, long long>;

EdgeKey keyOf(Point3 a, Point3 b) {
  const auto whole = [](double v) { return std::llround(v * 1e6); };
  const std::tuple p{whole(a.x), whole(a.y), whole(a.z)};
  const std::tuple q{whole(b.x), whole(b.y), whole(b.z)};
  return p < q ? std::tuple_cat(p, q) : std::tuple_cat(q, p);
}

/// An edge shows when it is the solid's outline for this eye or sharper than 30 degrees.
bool shows(const SolidEdge& edge, bool anyBack) {
  if (edge.front < 0) return false;
  if (anyBack || edge.normals.size() != 2) return true;
  return dot(edge.normals[0], edge.normals[1]) < std::cos(Angle::degrees(30).radians());
}

void addSolid(const Solid& solid, int owner, Point3 towardsEye, SceneParts& parts) {
  std::map<EdgeKey, SolidEdge> edges;
  for (const auto& face : solid.faces) {
    if (face.size() < 3) continue;
    const Point3 x = unit(face[1] - face[0]);
    const Point3 normal = unit(cross(x, face[2] - face[1]));
    const Transform frame = Transform::frame(face[0], x, cross(normal, x));
    const bool front = dot(normal, towardsEye) > 1e-9;
    const int plate = front ? static_cast<int>(parts.plates.size()) : -1;
    for (std::size_t i = 0; i < face.size(); ++i) {
      const Point3 a = face[i];
      const Point3 b = face[(i + 1) % face.size()];
      SolidEdge& edge = edges.try_emplace(keyOf(a, b), SolidEdge{a, b, {}, -1}).first->second;
      edge.normals.push_back(normal);
      if (front) edge.front = plate;
    }
    if (!front) continue;
    const Transform inverse = frame.inverse();
    Polygon outline;
    for (const Point3& corner : face) {
      const Point3 flat = inverse.apply(corner);
      outline.push_back({flat.x, flat.y});
    }
    parts.plates.push_back({frame, {Area{std::move(outline), {}}}, {}, owner});
  }
  for (const auto& [key, edge] : edges) {
    const bool anyBack = std::any_of(edge.normals.begin(), edge.normals.end(), [&](Point3 normal) {
      return dot(normal, towardsEye) <= 1e-9;
    });
    if (shows(edge, anyBack)) parts.edges.push_back({edge.a, edge.b, {edge.front, -1}, false});
  }
}

double sizeOf(const std::vector<Plate>& plates) {
  double size = 1;
  Point3 start;
  bool first = true;
  for (const Plate& plate : plates) {
    for (const Area& area : plate.shape) {
      for (const Point& corner : area.outer) {
        const Point3 p = plate.frame.apply(corner);
        if (first) start = p;
        first = false;
        const Point3 d = p - start;
        size = std::max({size, std::abs(d.x), std::abs(d.y), std::abs(d.z)});
      }
    }
  }
  return size;
}

}  // namespace

SceneParts sceneParts(const Net& net, const Pose& pose, const std::vector<Solid>& solids,
                      Point3 towardsEye) {
  SceneParts parts;
  addNet(net, pose, towardsEye, parts);
  for (std::size_t i = 0; i < solids.size(); ++i)
    addSolid(solids[i], -1 - static_cast<int>(i), towardsEye, parts);
  parts.size = sizeOf(parts.plates);
  return parts;
}

}  // namespace creasewright
