#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace creasewright {

/// An sRGB colour.
struct Colour {
  std::uint8_t red = 0;
  std::uint8_t green = 0;
  std::uint8_t blue = 0;
  constexpr bool operator==(const Colour&) const = default;
};

/// `#8FA88A`.
std::string hexText(Colour colour);
/// Reads `#8FA88A` or `#8fa88a`.
std::optional<Colour> colourFromHex(std::string_view text);

/// How light a colour is to the eye, from 0 (black) to 1 (white): the relative luminance of WCAG
/// 2.1.
double luminance(Colour colour);

}  // namespace creasewright
