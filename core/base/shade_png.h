#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace creasewright {

/// A PNG (ISO/IEC 15948) of black that is more or less clear: `dark` holds width x height values
/// from 0 (clear) to 255 (black), row by row from the top. Its bytes are not compressed.
std::string shadePng(int width, int height, std::span<const std::uint8_t> dark);

/// Whether bytes are such a picture, which is seen through; those of photographs are not.
bool isShadePng(std::string_view bytes);

}  // namespace creasewright
