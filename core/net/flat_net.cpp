#include "net/flat_net.h"

#include <algorithm>
#include <cmath>

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

/// Whether two points are nearer than `limit`; most are not, and cost no root.
bool nearer(Point a, Point b, double limit) {
  return std::abs(a.x - b.x) < limit && std::abs(a.y - b.y) < limit && distance(a, b) < limit;
}

/// `outline` with `p`, which lies on it, as one of its corners.
Polygon withCorner(Polygon outline, Point p) {
  constexpr double kSame = 1e-6;
  const auto onEdge = [&p](const Point& a, const Point& b) {
    const bool between = dot(p - a, b - a) > 0 && dot(p - b, a - b) > 0;
    return between && std::abs(cross(b - a, p - a)) < kSame * distance(a, b);
  };
  for (std::size_t i = 0; i < outline.size(); ++i) {
    if (nearer(outline[i], p, kSame)) {
      outline[i] = p;
      return outline;
    }
  }
  for (std::size_t i = 0; i < outline.size(); ++i) {
    if (!onEdge(outline[i], outline[(i + 1) % outline.size()])) continue;
    outline.insert(outline.begin() + static_cast<std::ptrdiff_t>(i) + 1, p);
    break;
  }
  return outline;
}

/// A hair's breadth on either side of a crease, inside both its panels: a union does not always
/// join areas that only touch.
Polygon bridge(const Segment& crease) {
  constexpr double kHalfWidth = 1e-4;
  constexpr double kFromEnds = 1e-3;
  const Point along = unit(crease.b - crease.a);
  const Point across = Point{-along.y, along.x} * kHalfWidth;
  const Point a = crease.a + along * kFromEnds;
  const Point b = crease.b - along * kFromEnds;
  return {a - across, b - across, b + across, a + across};
}

/// Brings corners that a union rounded back to those of the panels: where two edges meet at a sharp
/// angle, a nanometre of rounding moves their corner by tens.
void snap(Region& region, const std::vector<Polygon>& panels) {
  constexpr double kNear = 1e-4;  // mm
  const auto nearest = [&](Point& p) {
    for (const Polygon& panel : panels)
      for (const Point& corner : panel)
        if (nearer(p, corner, kNear)) {
          p = corner;
          return;
        }
  };
  for (Area& area : region) {
    std::ranges::for_each(area.outer, nearest);
    for (Polygon& hole : area.holes) std::ranges::for_each(hole, nearest);
  }
}

/// Panels of one piece of card, with their openings cut out. Both panels of a crease get its very
/// ends as corners, so that no rounding opens a gap between them.
Region outlineOf(const Net& net, const FlatNet& flat) {
  std::vector<Polygon> panels = flat.panels;
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    for (const int panel : {net.creases[i].parent, net.creases[i].child}) {
      Polygon& outline = panels[static_cast<std::size_t>(panel)];
      outline = withCorner(std::move(outline), flat.creases[i].a);
      outline = withCorner(std::move(outline), flat.creases[i].b);
    }
    panels.push_back(bridge(flat.creases[i]));
  }
  Region solid = unite(panels);
  snap(solid, flat.panels);
  std::vector<Polygon> holes;
  for (const auto& openings : flat.openings)
    holes.insert(holes.end(), openings.begin(), openings.end());
  return cutOut(solid, holes);
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

FlatNet layOut(const Net& net) {
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
  return flat;
}

FlatNet flatten(const Net& net) {
  FlatNet flat = layOut(net);
  flat.partings = findPartings(flat.panels, flat.creases);
  flat.outline = outlineOf(net, flat);
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
