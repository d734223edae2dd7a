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

}  // namespace creasewright
