#include "drawing/veil.h"

#include <algorithm>
#include <cmath>

#include "drawing/contrast.h"

namespace creasewright {
namespace {

constexpr double kLines = 3;  // to 1

/// Whether lines of all roles stand out from it.
bool carriesLines(Colour card) {
  return std::ranges::all_of(
      paintOrder(),
      [card](Role role) {
        const bool line = role == Role::Cut || role == Role::Valley || role == Role::Mountain ||
                          role == Role::Dimension;
        return !line || contrast(roleStyle(role).colour, card) >= kLines;
      });
}

}  // namespace

Colour veiled(Colour colour, double veil) {
  const auto mixed = [veil](std::uint8_t channel) {
    return static_cast<std::uint8_t>(std::lround(channel + (255 - channel) * veil));
  };
  return {mixed(colour.red), mixed(colour.green), mixed(colour.blue)};
}

double veilFor(std::span<const Colour> colours) {
  constexpr int kSteps = 50;
  for (int i = 0; i < kSteps; ++i) {
    const double veil = static_cast<double>(i) / kSteps;
    if (std::ranges::all_of(colours,
                            [veil](Colour each) { return carriesLines(veiled(each, veil)); }))
      return veil;
  }
  return 1;
}

}  // namespace creasewright
