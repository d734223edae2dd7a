#include "geometry/transform.h"

#include <cmath>

namespace creasewright {
namespace {

/// Cosine and sine, exact at multiples of 90 degrees so that right-angled boxes stay exact.
struct Turn {
  double c;
  double s;
  explicit Turn(Angle angle) {
    const double quarter = angle.degrees() / 90;
    if (quarter == std::round(quarter)) {
      static constexpr std::array<double, 4> kCos{1, 0, -1, 0};
      const auto k = static_cast<std::size_t>(std::fmod(std::fmod(quarter, 4) + 4, 4));
      c = kCos.at(k);
      s = kCos.at((k + 3) % 4);
      return;
    }
    c = std::cos(angle.radians());
    s = std::sin(angle.radians());
  }
};

}  // namespace

Transform Transform::translation(Point3 by) {
  Transform t;
  t.shift_ = by;
  return t;
}

Transform Transform::rotationX(Angle angle) {
  const Turn r(angle);
  Transform t;
  t.rows_ = {Point3{1, 0, 0}, Point3{0, r.c, -r.s}, Point3{0, r.s, r.c}};
  return t;
}

Transform Transform::rotationY(Angle angle) {
  const Turn r(angle);
  Transform t;
  t.rows_ = {Point3{r.c, 0, r.s}, Point3{0, 1, 0}, Point3{-r.s, 0, r.c}};
  return t;
}

Transform Transform::rotationZ(Angle angle) {
  const Turn r(angle);
  Transform t;
  t.rows_ = {Point3{r.c, -r.s, 0}, Point3{r.s, r.c, 0}, Point3{0, 0, 1}};
  return t;
}

Transform Transform::frame(Point3 origin, Point3 xAxis, Point3 yAxis) {
  const Point3 z = cross(xAxis, yAxis);
  Transform t;
  t.rows_ = {Point3{xAxis.x, yAxis.x, z.x}, Point3{xAxis.y, yAxis.y, z.y},
             Point3{xAxis.z, yAxis.z, z.z}};
  t.shift_ = origin;
  return t;
}

/// As after(rotationX(angle)): the x axis stays.
Transform Transform::turnedAboutX(Angle angle) const {
  const Turn r(angle);
  Transform t;
  for (std::size_t i = 0; i < 3; ++i) {
    const Point3& row = rows_[i];
    t.rows_[i] = {row.x, row.y * r.c + row.z * r.s, row.z * r.c - row.y * r.s};
  }
  t.shift_ = shift_;
  return t;
}

}  // namespace creasewright
