#include "net/flat_net.h"

#include <algorithm>

#include "net/partings.h"

namespace creasewright {
namespace {

Polygon placed(const Transform& frame, const Polyline& points) {
  Polygon result;
  result.reserve(points.size());
  for (const Point& p : points) {
    const Point3 q = frame.apply(p);
    result.push_back({q.x, q.y});
  }
  return result;
}

std::vector<Polygon> placed(const Transform& frame, const std::vector<Polygon>& polygons) {
  std::vector<Polygon> result;
  result.reserve(polygons.size());
  for (const Polygon& polygon : polygons) result.push_back(placed(frame, polygon));
  return result;
}

Bounds boundsOf(const Net& net, const Pose& frames) {
  std::vector<Point> all;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Polygon outline = placed(frames[i], net.panels[i].outline);
    all.insert(all.end(), outline.begin(), outline.end());
  }
  return bounds(all);
}

/// Panels of one piece of card, with their openings cut out.
Region outlineOf(const FlatNet& flat) {
  Region solid = unite(flat.panels);
  std::vector<Polygon> holes;
  for (const auto& openings : flat.openings)
    holes.insert(holes.end(), openings.begin(), openings.end());
  return holes.empty() ? solid : subtract(solid, unite(holes));
}

Region wasteOf(const FlatNet& flat) {
  const Polygon blank{{0, 0}, {flat.width, 0}, {flat.width, flat.height}, {0, flat.height}};
  Region outer;
  for (const Area& area : flat.outline) outer.push_back({area.outer, {}});
  return subtract(region(blank), outer);
}

}  // namespace

Point FlatNet::place(int panel, Point p) const {
  const Point3 q = frames[static_cast<std::size_t>(panel)].apply(p);
  return {q.x, q.y};
}

FlatNet flatten(const Net& net) {
  FlatNet flat;
  flat.frames = pose(net, std::vector<Angle>(net.creases.size()));
  const Bounds box = boundsOf(net, flat.frames);
  flat.width = box.width();
  flat.height = box.height();
  const Transform toCorner = Transform::translation({-box.low.x, -box.low.y, 0});
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    flat.frames[i] = toCorner.after(flat.frames[i]);
    flat.panels.push_back(placed(flat.frames[i], net.panels[i].outline));
    flat.openings.push_back(placed(flat.frames[i], net.panels[i].openings));
  }
  for (const Crease& crease : net.creases)
    flat.creases.push_back({flat.place(crease.parent, crease.onParent.a),
                            flat.place(crease.parent, crease.onParent.b)});
  for (const Slit& slit : net.slits)
    flat.slits.push_back(placed(flat.frames[static_cast<std::size_t>(slit.panel)], slit.line));
  flat.partings = findPartings(flat.panels, flat.creases);
  flat.outline = outlineOf(flat);
  flat.waste = wasteOf(flat);
  return flat;
}

std::vector<Polyline> cutLines(const FlatNet& flat) {
  std::vector<Polyline> lines;
  const auto close = [&lines](Polyline ring) {
    if (!ring.empty()) ring.push_back(ring.front());
    lines.push_back(std::move(ring));
  };
  for (const Area& area : flat.outline) {
    close(area.outer);
    for (const Polygon& hole : area.holes) close(hole);
  }
  for (const Segment& parting : flat.partings) lines.push_back({parting.a, parting.b});
  lines.insert(lines.end(), flat.slits.begin(), flat.slits.end());
  return lines;
}

}  // namespace creasewright
