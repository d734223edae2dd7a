#pragma once

#include <compare>
#include <numbers>

namespace creasewright {

/// An angle. Fold angles are deviations from flat: 0 is the flat net, 90 a right-angled wall.
class Angle {
 public:
  constexpr Angle() = default;
  static constexpr Angle degrees(double value) { return Angle(value); }
  static constexpr Angle radians(double value) { return Angle(value * 180 / std::numbers::pi); }

  [[nodiscard]] constexpr double degrees() const { return degrees_; }
  [[nodiscard]] constexpr double radians() const { return degrees_ * std::numbers::pi / 180; }

  constexpr Angle operator-() const { return Angle(-degrees_); }
  friend constexpr Angle operator*(Angle a, double factor) { return Angle(a.degrees_ * factor); }
  constexpr auto operator<=>(const Angle&) const = default;

 private:
  constexpr explicit Angle(double value) : degrees_(value) {}
  double degrees_ = 0;  // degrees, so that 90 stays 90 in files
};

constexpr double toDegrees(double radians) { return Angle::radians(radians).degrees(); }

}  // namespace creasewright
