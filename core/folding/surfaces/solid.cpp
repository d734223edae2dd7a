#include "folding/surfaces/solid.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace creasewright {
namespace {

constexpr int kSides = 24;
using Ring = std::vector<Point3>;

/// A ring of so many corners about the z axis, with radius `x` and `y` along the axes.
Ring ring(double x, double y, double z, int sides = kSides) {
  Ring corners;
  for (int i = 0; i < sides; ++i) {
    const double angle = 2 * std::numbers::pi * (i + 0.5) / sides;
    corners.push_back({x * std::cos(angle), y * std::sin(angle), z});
  }
  return corners;
}

void cap(Solid& solid, const Ring& corners, bool top) {
  Ring face = corners;
  if (!top) std::reverse(face.begin(), face.end());
  solid.faces.push_back(face);
}

/// Side faces between two rings: quadrilaterals where they are plane, else triangles.
void wall(Solid& solid, const Ring& below, const Ring& above, bool plane) {
  const std::size_t n = below.size();
  for (std::size_t i = 0; i < n; ++i) {
    const std::size_t j = (i + 1) % n;
    if (plane) {
      solid.faces.push_back({below[i], below[j], above[j], above[i]});
      continue;
    }
    solid.faces.push_back({below[i], below[j], above[j]});
    if (distance(above[i], above[j]) > 1e-9) solid.faces.push_back({below[i], above[j], above[i]});
  }
}

/// The axis (0, 1, 2) along which a direction points most.
int mainAxis(Point3 v) {
  const double x = std::abs(v.x);
  const double y = std::abs(v.y);
  const double z = std::abs(v.z);
  if (z >= x && z >= y) return 2;
  return y >= x ? 1 : 0;
}

}  // namespace

Solid boxSolid(double length, double width, double height) {
  const double x = length / 2;
  const double y = width / 2;
  const Ring below{{-x, -y, 0}, {x, -y, 0}, {x, y, 0}, {-x, y, 0}};
  Ring above = below;
  for (Point3& corner : above) corner.z = height;
  Solid solid;
  cap(solid, below, false);
  cap(solid, above, true);
  wall(solid, below, above, true);
  return solid;
}

Solid cylinderSolid(double diameter, double height) {
  const double radius = diameter / 2 / std::cos(std::numbers::pi / kSides);
  const Ring below = ring(radius, radius, 0);
  const Ring above = ring(radius, radius, height);
  Solid solid;
  cap(solid, below, false);
  cap(solid, above, true);
  wall(solid, below, above, true);
  return solid;
}

Solid sphereSolid(double diameter, int zones) {
  const double radius = diameter / 2;
  const auto zone = [&](int i) {
    const double latitude = std::numbers::pi * (static_cast<double>(i) / zones - 0.5);
    const double around = radius * std::cos(latitude);
    return ring(around, around, radius + radius * std::sin(latitude), 2 * zones);
  };
  Solid solid;
  cap(solid, zone(1), false);
  cap(solid, zone(zones - 1), true);
  for (int i = 1; i + 1 < zones; ++i) wall(solid, zone(i), zone(i + 1), true);
  return solid;
}

Solid tubeSolid(double crimp, double thickness, double height) {
  const Ring below = ring(thickness / 2, thickness / 2, 0);
  Ring above;
  for (const Point3& corner : below)
    above.push_back({corner.x / (thickness / 2) * crimp / 2, 0, height});
  Solid solid;
  cap(solid, below, false);
  wall(solid, below, above, false);
  return solid;
}

Solid placed(const Solid& solid, const Transform& place) {
  Solid moved = solid;
  for (auto& face : moved.faces)
    for (Point3& corner : face) corner = place.apply(corner);
  return moved;
}

Transform restingPlace(const Net& net, const Pose& folded, const Cavity& cavity,
                       const CavityBox& box, const CavitySize& product, Point3 up) {
  const std::array<Point3, 3> axes{Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}};
  const std::array<double, 3> sizes{product.length, product.width, product.height};
  const int panel = net.find(cavity.panel).value_or(0);
  const Point3 upright = folded[panel].inverse().turn(up);
  Point3 middle = (box.low + box.high) / 2;
  for (int side = 0; side < 3; ++side) {
    const Point3 axis = axes[cavity.axes[side]];
    if (mainAxis(upright) != cavity.axes[side]) continue;
    const double room = dot(axis, box.high - box.low);
    const double lower = dot(axis, upright) > 0 ? 1 : -1;
    middle = middle - axis * (lower * (room - sizes[side]) / 2);
  }
  const Point3 x = axes[cavity.axes[0]];
  Point3 y = axes[cavity.axes[1]];
  Point3 z = cross(x, y);
  if (dot(z, upright) < 0) {
    y = y * -1;
    z = z * -1;
  }
  const Point3 foot = middle - z * (product.height / 2);
  return folded[panel].after(Transform::frame(foot, x, y));
}

}  // namespace creasewright
