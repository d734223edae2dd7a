#include "folding/surfaces/view.h"

namespace creasewright {

View standardView() { return {Angle::degrees(-30), Angle::degrees(35)}; }

View frontalView() { return {Angle::degrees(0), Angle::degrees(0)}; }

View viewFromAbove() { return {Angle::degrees(0), Angle::degrees(kSteepestTilt)}; }

Camera camera(const View& view, Point3 up) {
  const Point3 upright = norm(up) > 0 ? unit(up) : Point3{0, 0, 1};
  const Point3 x{1, 0, 0};
  const Point3 y{0, 1, 0};
  const Point3 start = std::abs(dot(upright, x)) < 0.9 ? x : y;
  const Point3 right = unit(start - upright * dot(start, upright));
  const Point3 away = cross(upright, right);
  const double turn = view.turn.radians();
  const double tilt = view.tilt.radians();
  const Point3 turnedRight = right * std::cos(turn) + away * std::sin(turn);
  const Point3 turnedAway = away * std::cos(turn) - right * std::sin(turn);
  return {turnedRight, upright * std::cos(tilt) + turnedAway * std::sin(tilt),
          upright * std::sin(tilt) - turnedAway * std::cos(tilt)};
}

Point3 lampOf(const Camera& eye) {
  const Point3 lamp = unit(kLamp);
  return eye.right * lamp.x + eye.up * lamp.y + eye.towardsEye * lamp.z;
}

}  // namespace creasewright
