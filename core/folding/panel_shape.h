#pragma once

#include <optional>
#include <vector>

#include "geometry/transform.h"
#include "net/net.h"

namespace creasewright {

/// A convex part of a panel as the collision check needs it, in the panel's frame. The corners
/// leave the panel's openings out of account, the core does not.
struct ConvexShape {
  int panel = 0;
  Polygon corners;
  std::vector<Polygon> core;  ///< what is farther than the tolerance from the panel's rim; convex
  std::vector<Bounds> coreBounds;  ///< of each of `core`
  Point centre;
  double radius = 0;  ///< of a circle about the centre that holds all corners
};

/// The parts of every panel. `tolerance` in mm.
std::vector<ConvexShape> convexShapes(const Net& net, double tolerance);

/// A convex part where it is.
struct PlacedShape {
  const ConvexShape* shape = nullptr;
  Transform frame;
  std::vector<Point3> corners;

  PlacedShape(const ConvexShape& of, const Transform& place);
  [[nodiscard]] Point3 normal() const { return frame.normal(); }
};

/// The largest of dot(direction, corner).
double reach(const std::vector<Point3>& corners, Point3 direction);

/// Whether the cores of two parts cut one another and both parts stand out by more than `tolerance`
/// mm on both sides of the other's plane. Contacts along rims and coplanar parts are no cuts.
bool cutDeeply(const PlacedShape& a, const PlacedShape& b, double tolerance);

/// Height in mm of b over the drawn face of a, in the middle of where their cores lie over one
/// another as seen along a's normal; nothing when they do not.
std::optional<double> heightOver(const PlacedShape& a, const PlacedShape& b);

}  // namespace creasewright
