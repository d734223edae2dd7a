#pragma once

#include <cmath>
#include <limits>
#include <vector>

#include "folding/surfaces/view.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright::testing {

/// Even-odd test written for the tests alone.
inline bool inRing(Point p, const Polygon& ring) {
  bool inside = false;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
    if ((ring[i].y > p.y) != (ring[j].y > p.y) &&
        p.x < (ring[j].x - ring[i].x) * (p.y - ring[i].y) / (ring[j].y - ring[i].y) + ring[i].x)
      inside = !inside;
  return inside;
}

/// Where an eye ray meets a panel: its nearness to the eye, or -infinity when it passes by.
inline double hit(const Panel& panel, const Transform& place, const Camera& eye, Point seen) {
  constexpr double kNever = -std::numeric_limits<double>::infinity();
  const Point3 start = eye.right * seen.x + eye.up * seen.y;
  const Point3 normal = place.normal();
  const double facing = dot(normal, eye.towardsEye);
  if (std::abs(facing) < 1e-9) return kNever;
  const double nearness = dot(normal, place.apply(Point{0, 0}) - start) / facing;
  const Point3 local = place.inverse().apply(start + eye.towardsEye * nearness);
  if (!inRing({local.x, local.y}, panel.outline)) return kNever;
  for (const Polygon& opening : panel.openings)
    if (inRing({local.x, local.y}, opening)) return kNever;
  return nearness;
}

/// The panel nearest to the eye on the ray through a point of the picture; -1 for none.
inline int nearestPanel(const Net& net, const Pose& pose, const Camera& eye, Point seen) {
  int nearest = -1;
  double best = -std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const double nearness = hit(net.panels[i], pose[i], eye, seen);
    if (nearness > best) {
      best = nearness;
      nearest = static_cast<int>(i);
    }
  }
  return nearest;
}

}  // namespace creasewright::testing
