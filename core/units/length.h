#pragma once

#include <cmath>
#include <compare>
#include <cstdint>

namespace creasewright {

/// A length in whole nanometres. 1/64 in (396 875 nm) and 1 mm (1 000 000 nm) are both exact, so
/// fractions of an inch and millimetres never drift.
class Length {
 public:
  constexpr Length() = default;

  static constexpr Length nanometres(std::int64_t count) { return Length(count); }

  /// Nearest whole nanometre.
  static Length mm(double value) { return Length(std::llround(value * 1e6)); }

  /// `numerator/denominator` inch, rounded to a nanometre; exact while the denominator divides 64.
  static constexpr Length inches(std::int64_t numerator, std::int64_t denominator = 1) {
    return Length(numerator * 25'400'000 / denominator);
  }

  [[nodiscard]] constexpr std::int64_t nm() const { return nm_; }
  [[nodiscard]] constexpr double mm() const { return static_cast<double>(nm_) / 1e6; }
  [[nodiscard]] constexpr double inches() const { return static_cast<double>(nm_) / 25.4e6; }

  constexpr Length operator-() const { return Length(-nm_); }
  constexpr Length& operator+=(Length other) { return nm_ += other.nm_, *this; }
  constexpr Length& operator-=(Length other) { return nm_ -= other.nm_, *this; }
  friend constexpr Length operator+(Length a, Length b) { return Length(a.nm_ + b.nm_); }
  friend constexpr Length operator-(Length a, Length b) { return Length(a.nm_ - b.nm_); }
  friend constexpr Length operator*(Length a, std::int64_t n) { return Length(a.nm_ * n); }
  friend constexpr Length operator*(std::int64_t n, Length a) { return Length(a.nm_ * n); }
  friend constexpr Length operator/(Length a, std::int64_t n) { return Length(a.nm_ / n); }

  constexpr auto operator<=>(const Length&) const = default;

 private:
  constexpr explicit Length(std::int64_t count) : nm_(count) {}
  std::int64_t nm_ = 0;
};

/// The unit a person reads and types in.
enum class Unit { Millimetre, Centimetre, Inch };

constexpr std::int64_t nanometresIn(Unit unit) {
  switch (unit) {
    case Unit::Millimetre:
      return 1'000'000;
    case Unit::Centimetre:
      return 10'000'000;
    case Unit::Inch:
      return 25'400'000;
  }
  return 1;
}

}  // namespace creasewright
