#include "base/colour.h"

#include <charconv>
#include <cmath>

namespace creasewright {
namespace {

/// A channel as light: the sRGB curve of IEC 61966-2-1.
double linear(std::uint8_t channel) {
  const double share = channel / 255.0;
  return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

}  // namespace

std::string hexText(Colour colour) {
  constexpr std::string_view kDigits = "0123456789ABCDEF";
  std::string text = "#";
  for (const int channel : {colour.red, colour.green, colour.blue}) {
    text += kDigits[static_cast<std::size_t>(channel / 16)];
    text += kDigits[static_cast<std::size_t>(channel % 16)];
  }
  return text;
}

std::optional<Colour> colourFromHex(std::string_view text) {
  constexpr std::size_t kLength = 7;
  if (text.size() != kLength || text.front() != '#') return std::nullopt;
  Colour colour;
  std::size_t at = 1;
  for (std::uint8_t* channel : {&colour.red, &colour.green, &colour.blue}) {
    const char* end = text.data() + at + 2;
    const auto read = std::from_chars(text.data() + at, end, *channel, 16);
    if (read.ec != std::errc() || read.ptr != end) return std::nullopt;
    at += 2;
  }
  return colour;
}

double luminance(Colour colour) {
  return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
}

}  // namespace creasewright
