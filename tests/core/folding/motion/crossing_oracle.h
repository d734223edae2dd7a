#pragma once

#include <array>
#include <vector>

#include "net/pose.h"

// An independent, slow judgement of collisions for convex panels: many poses at even distances, the
// panels as triangle fans, each edge of one triangle against the other triangle.

namespace creasewright::testing {

using Triangle = std::array<Point3, 3>;

/// Whether the segment goes through the inside of the triangle (Moeller and Trumbore, from memory).
inline bool pierces(Point3 from, Point3 to, const Triangle& t) {
  const Point3 way = to - from;
  const Point3 e1 = t[1] - t[0];
  const Point3 e2 = t[2] - t[0];
  const Point3 h = cross(way, e2);
  const double det = dot(e1, h);
  if (std::abs(det) < 1e-12) return false;
  const Point3 s = from - t[0];
  const double u = dot(s, h) / det;
  const Point3 q = cross(s, e1);
  const double v = dot(way, q) / det;
  const double along = dot(e2, q) / det;
  return u > 0 && v > 0 && u + v < 1 && along > 0 && along < 1;
}

inline bool trianglesCut(const Triangle& a, const Triangle& b) {
  for (std::size_t i = 0; i < 3; ++i)
    if (pierces(a[i], a[(i + 1) % 3], b) || pierces(b[i], b[(i + 1) % 3], a)) return true;
  return false;
}

/// A convex polygon with every edge moved inwards by `margin` mm; empty when nothing is left.
inline Polygon shrunk(const Polygon& polygon, double margin) {
  Polygon result = polygon;
  for (std::size_t i = 0; i < polygon.size() && result.size() >= 3; ++i) {
    const Point a = polygon[i];
    const Point b = polygon[(i + 1) % polygon.size()];
    const Point in = turnLeft(unit(b - a)) * margin;
    result = clipLeftOf(result, a + in, b + in);
  }
  return result;
}

inline bool standsAcross(const Panel& panel, const Transform& place, const Transform& plane,
                         double depth) {
  const Transform seen = plane.inverse().after(place);
  double low = 0;
  double high = 0;
  for (const Point& corner : panel.outline) {
    low = std::min(low, seen.apply(corner).z);
    high = std::max(high, seen.apply(corner).z);
  }
  return low < -depth && high > depth;
}

/// Whether two panels, each less a rim of `margin`, cut, and each stands that far out of the other.
inline bool panelsCut(const Net& net, const Pose& placed, std::size_t a, std::size_t b,
                      double margin) {
  if (!standsAcross(net.panels[b], placed[b], placed[a], margin) ||
      !standsAcross(net.panels[a], placed[a], placed[b], margin))
    return false;
  const Polygon coreA = shrunk(net.panels[a].outline, margin);
  const Polygon coreB = shrunk(net.panels[b].outline, margin);
  const auto triangle = [&](const Polygon& core, const Transform& place, std::size_t i) {
    return Triangle{place.apply(core[0]), place.apply(core[i]), place.apply(core[i + 1])};
  };
  for (std::size_t i = 1; i + 1 < coreA.size(); ++i)
    for (std::size_t k = 1; k + 1 < coreB.size(); ++k)
      if (trianglesCut(triangle(coreA, placed[a], i), triangle(coreB, placed[b], k))) return true;
  return false;
}

inline bool joinedByCrease(const Net& net, std::size_t a, std::size_t b) {
  for (const Crease& crease : net.creases)
    if (std::minmax(static_cast<std::size_t>(crease.parent),
                    static_cast<std::size_t>(crease.child)) == std::minmax(a, b))
      return true;
  return false;
}

/// Whether any two panels without a common crease cut at one of `samples` + 1 moments.
inline bool cutsAnywhere(const Net& net, double margin, int samples) {
  for (int i = 0; i <= samples; ++i) {
    const Pose placed = pose(net, static_cast<double>(i) / samples);
    for (std::size_t a = 0; a < net.panels.size(); ++a)
      for (std::size_t b = a + 1; b < net.panels.size(); ++b)
        if (!joinedByCrease(net, a, b) && panelsCut(net, placed, a, b, margin)) return true;
  }
  return false;
}

}  // namespace creasewright::testing
