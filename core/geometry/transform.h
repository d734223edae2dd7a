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

  [[nodiscard]] constexpr Point3 apply(Point3 p) const { return turn(p) + shift_; }
  [[nodiscard]] constexpr Point3 apply(Point p) const { return apply(Point3{p.x, p.y, 0}); }
  /// Rotates a direction, no translation.
  [[nodiscard]] constexpr Point3 turn(Point3 v) const {
    return {dot(rows_[0], v), dot(rows_[1], v), dot(rows_[2], v)};
  }
  /// Image of the z axis: the normal of the drawn face of a panel placed by this transform.
  [[nodiscard]] constexpr Point3 normal() const { return turn({0, 0, 1}); }
  [[nodiscard]] constexpr Transform inverse() const {
    Transform t;
    t.rows_ = transposed();
    t.shift_ = t.turn(shift_) * -1;
    return t;
  }
  /// First `inner`, then this.
  [[nodiscard]] constexpr Transform after(const Transform& inner) const {
    const Rows columns = inner.transposed();
    Transform t;
    for (std::size_t i = 0; i < 3; ++i)
      t.rows_[i] = {dot(rows_[i], columns[0]), dot(rows_[i], columns[1]),
                    dot(rows_[i], columns[2])};
    t.shift_ = apply(inner.shift_);
    return t;
  }
  /// First a rotation about the x axis, then this.
  [[nodiscard]] Transform turnedAboutX(Angle angle) const;

 private:
  using Rows = std::array<Point3, 3>;
  [[nodiscard]] constexpr Rows transposed() const {
    return {Point3{rows_[0].x, rows_[1].x, rows_[2].x}, Point3{rows_[0].y, rows_[1].y, rows_[2].y},
            Point3{rows_[0].z, rows_[1].z, rows_[2].z}};
  }

  // Of the rotation matrix.
  Rows rows_{Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}};
  Point3 shift_{};
};

}  // namespace creasewright
