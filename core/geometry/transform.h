#pragma once

#include <array>

#include "geometry/point.h"
#include "units/angle.h"

namespace creasewright {

/// A rigid motion in space: rotation, then translation (mm).
class Transform {
 public:
  constexpr Transform() = default;  ///< identity

  static Transform translation(Point3 by);
  static Transform rotationX(Angle angle);
  static Transform rotationY(Angle angle);
  static Transform rotationZ(Angle angle);
  /// Maps the frame (origin, x axis, y axis) of the plane into space: x and y must be orthonormal.
  static Transform frame(Point3 origin, Point3 xAxis, Point3 yAxis);

  [[nodiscard]] Point3 apply(Point3 p) const { return turn(p) + shift_; }
  [[nodiscard]] Point3 apply(Point p) const { return apply(Point3{p.x, p.y, 0}); }
  /// Rotates a direction, no translation.
  [[nodiscard]] Point3 turn(Point3 v) const;
  /// Image of the z axis: the normal of the drawn face of a panel placed by this transform.
  [[nodiscard]] Point3 normal() const { return turn({0, 0, 1}); }
  [[nodiscard]] Transform inverse() const;
  /// First `inner`, then this.
  [[nodiscard]] Transform after(const Transform& inner) const;

 private:
  // Rows of the rotation matrix.
  std::array<Point3, 3> rows_{Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}};
  Point3 shift_{};
};

}  // namespace creasewright
