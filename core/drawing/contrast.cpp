#include "drawing/contrast.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

double linear(std::uint8_t channel) {
  const double c = channel / 255.0;
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double luminance(Colour colour) {
  return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
}

std::uint8_t part(std::uint8_t channel, int percent) {
  return static_cast<std::uint8_t>(channel * percent / 100);
}

}  // namespace

double contrast(Colour a, Colour b) {
  const auto [dark, light] = std::minmax({luminance(a), luminance(b)});
  return (light + 0.05) / (dark + 0.05);
}

Colour darkened(Colour ink, Colour ground, double least) {
  for (int percent = 100; percent > 0; --percent) {
    const Colour tone{part(ink.red, percent), part(ink.green, percent), part(ink.blue, percent)};
    if (contrast(tone, ground) >= least) return tone;
  }
  return {0, 0, 0};
}

}  // namespace creasewright
