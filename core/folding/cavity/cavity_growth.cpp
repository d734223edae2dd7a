#include "folding/cavity/cavity_growth.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

class Growth {
 public:
  Growth(const std::vector<Piece3>& pieces, const Coordinates& seed, const Box& limits, double half)
      : pieces_(pieces), limits_(limits), half_(half), box_{seed, seed} {}

  /// Starts from a sliver, so that growing one axis after the other meets the card that is there.
  void start() {
    constexpr double kSliver = 1e-4;
    for (std::size_t axis = 0; axis < 3; ++axis) {
      box_.low.at(axis) -= kSliver;
      box_.high.at(axis) += kSliver;
    }
    if (!isFree(box_)) box_.high = box_.low;
  }

  [[nodiscard]] bool isEmpty() const { return box_.volume() <= 0; }
  [[nodiscard]] double size(std::size_t axis) const {
    return box_.high.at(axis) - box_.low.at(axis);
  }
  [[nodiscard]] const Box& box() const { return box_; }

  /// The largest cube about the seed.
  [[nodiscard]] Box cube() const {
    double fits = 0;
    double tooLarge = 1000;  // mm, half of what any card has
    while (tooLarge - fits > 1e-3) {
      const double half = (fits + tooLarge) / 2;
      (isFree(widened(half)) ? fits : tooLarge) = half;
    }
    return widened(fits);
  }

  /// Moves one side outwards by `by` mm, or as far as is free.
  void push(std::size_t axis, bool high, double by) {
    const double most = high ? limits_.high.at(axis) - box_.high.at(axis)
                             : box_.low.at(axis) - limits_.low.at(axis);
    double free = 0;
    double tried = std::clamp(by, 0.0, std::max(0.0, most));
    if (isFree(pushed(axis, high, tried))) {
      box_ = pushed(axis, high, tried);
      return;
    }
    double blocked = tried;
    while (blocked - free > kTouch / 4) {
      tried = (free + blocked) / 2;
      (isFree(pushed(axis, high, tried)) ? free : blocked) = tried;
    }
    box_ = pushed(axis, high, free);
  }

 private:
  /// All sides moved out by `by` mm, within the limits.
  [[nodiscard]] Box widened(double by) const {
    Box box = box_;
    for (std::size_t axis = 0; axis < 3; ++axis) {
      box.low.at(axis) = std::max(box.low.at(axis) - by, limits_.low.at(axis));
      box.high.at(axis) = std::min(box.high.at(axis) + by, limits_.high.at(axis));
    }
    return box;
  }
  [[nodiscard]] Box pushed(std::size_t axis, bool high, double by) const {
    Box box = box_;
    (high ? box.high : box.low).at(axis) += high ? by : -by;
    return box;
  }
  [[nodiscard]] bool isFree(const Box& box) const {
    return std::ranges::none_of(
        pieces_, [&](const Piece3& piece) { return !within(piece, box, half_).empty(); });
  }

  const std::vector<Piece3>& pieces_;
  const Box& limits_;
  double half_;
  Box box_;
};

Box grownTo(Growth growth, const Coordinates& wanted) {
  for (std::size_t axis = 0; axis < 3; ++axis)
    for (const bool high : {false, true})
      growth.push(axis, high, std::max(0.0, wanted.at(axis) - growth.size(axis)) / (high ? 1 : 2));
  for (std::size_t axis = 0; axis < 3; ++axis)
    growth.push(axis, false, std::max(0.0, wanted.at(axis) - growth.size(axis)));
  return growth.box();
}

}  // namespace

bool hasSlantedCard(const std::vector<Piece3>& pieces) {
  constexpr double kFlat = 1e-6;
  return std::ranges::any_of(pieces, [](const Piece3& piece) {
    for (std::size_t axis = 0; axis < 3; ++axis) {
      const auto [low, high] =
          std::ranges::minmax(piece, {}, [axis](const Coordinates& c) { return c.at(axis); });
      if (high.at(axis) - low.at(axis) < kFlat) return false;
    }
    return true;
  });
}

Box grownBox(const std::vector<Piece3>& pieces, const Coordinates& seed, const Coordinates& wanted,
             const Box& limits, double half) {
  Growth growth(pieces, seed, limits, half);
  growth.start();
  if (growth.isEmpty()) return growth.box();
  if (std::ranges::any_of(wanted, [](double size) { return size > 0; }))
    return grownTo(growth, wanted);
  return growth.cube();
}

}  // namespace creasewright
