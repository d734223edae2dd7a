#pragma once

#include "geometry/point.h"
#include "units/angle.h"

namespace creasewright {

/// Where the eye is: turned about the box and looking down on it; orthographic.
struct View {
  Angle turn = Angle::degrees(-35);  ///< about the upright axis
  Angle tilt = Angle::degrees(25);   ///< above the ground
};

/// The view a maker would photograph: two sides and the top show, the front the most.
View standardView();
View frontalView();
View viewFromAbove();

/// Degrees; nearer to the upright axis nothing says where the front is.
inline constexpr double kSteepestTilt = 89;

/// The eye's axes as unit vectors in panel 0's frame; right x up = towardsEye.
struct Camera {
  Point3 right;
  Point3 up;
  Point3 towardsEye;

  [[nodiscard]] Point project(Point3 p) const { return {dot(p, right), dot(p, up)}; }
  [[nodiscard]] double nearness(Point3 p) const { return dot(p, towardsEye); }
};

/// `up` is the direction in panel 0's frame that is drawn upwards at tilt 0. At turn 0 the frame's
/// x axis points right (its y axis when `up` lies along x); a positive turn takes the eye to the
/// right about the upright axis.
Camera camera(const View& view, Point3 up);

/// Where the lamp is along these axes: to the upper left in front of the picture.
inline constexpr Point3 kLamp{-0.45, 0.7, 0.55};
/// Towards the lamp, a unit vector in panel 0's frame.
Point3 lampOf(const Camera& eye);

}  // namespace creasewright
