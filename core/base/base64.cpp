#include "base/base64.h"

#include <cstdint>

namespace creasewright {
namespace {

constexpr std::string_view kDigits =
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

std::uint32_t byteAt(std::string_view bytes, std::size_t i) {
  return i < bytes.size() ? static_cast<unsigned char>(bytes[i]) : 0U;
}

}  // namespace

std::string toBase64(std::string_view bytes) {
  std::string text;
  text.reserve((bytes.size() + 2) / 3 * 4);
  for (std::size_t i = 0; i < bytes.size(); i += 3) {
    const std::uint32_t three =
        byteAt(bytes, i) << 16 | byteAt(bytes, i + 1) << 8 | byteAt(bytes, i + 2);
    for (const unsigned shift : {18U, 12U, 6U, 0U}) text += kDigits[three >> shift & 63U];
  }
  const std::size_t padding = (3 - bytes.size() % 3) % 3;
  text.replace(text.size() - padding, padding, padding, '=');
  return text;
}

std::optional<std::string> fromBase64(std::string_view text) {
  if (text.size() % 4 != 0) return std::nullopt;
  const std::size_t padding = text.ends_with("==") ? 2 : text.ends_with('=') ? 1 : 0;
  const std::size_t digits = text.size() - padding;
  std::string bytes;
  bytes.reserve(text.size() / 4 * 3);
  std::uint32_t held = 0;
  unsigned bits = 0;
  for (std::size_t i = 0; i < digits; ++i) {
    const std::size_t digit = kDigits.find(text[i]);
    if (digit == std::string_view::npos) return std::nullopt;
    held = (held << 6 | static_cast<std::uint32_t>(digit)) & 0xFFFU;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes += static_cast<char>(held >> bits & 0xFFU);
  }
  // Bits that are left over must be zero, so that every text stands for other bytes.
  if ((held & ((1U << bits) - 1U)) != 0) return std::nullopt;
  return bytes;
}

}  // namespace creasewright
