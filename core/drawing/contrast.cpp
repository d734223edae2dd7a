#include "drawing/contrast.h"

#include <algorithm>

namespace creasewright {
namespace {

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
