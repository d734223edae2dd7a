#pragma once

#include <cstddef>
#include <string_view>

namespace creasewright {

/// A number of `size` bytes, the highest first, as PNG and JPEG write them; 0 beyond the end.
inline int numberAt(std::string_view bytes, std::size_t at, std::size_t size) {
  int number = 0;
  if (at > bytes.size() || bytes.size() - at < size) return 0;
  for (std::size_t i = 0; i < size; ++i)
    number = number * 256 + static_cast<unsigned char>(bytes[at + i]);
  return number;
}

}  // namespace creasewright
