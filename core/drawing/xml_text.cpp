#include "drawing/xml_text.h"

#include <algorithm>
#include <cstddef>

namespace creasewright {
namespace {

/// The code point at the start of `text` and its bytes; no bytes where there is none.
struct CodePoint {
  char32_t value = 0;
  std::size_t size = 0;
};

CodePoint firstOf(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned lead = byte(0);
  if (lead < 0x80) return {lead, 1};
  const std::size_t size = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  if (lead < 0xC2 || lead > 0xF4 || size > text.size()) return {};
  char32_t value = lead & (0x7FU >> size);
  for (std::size_t i = 1; i < size; ++i) {
    if ((byte(i) & 0xC0U) != 0x80U) return {};
    value = value << 6U | (byte(i) & 0x3FU);
  }
  const bool shortest =
      size == 2 || (size == 3 && value >= 0x800) || (size == 4 && value >= 0x10000);
  return shortest && value <= 0x10FFFF ? CodePoint{value, size} : CodePoint{};
}

bool isControl(char32_t c) { return c < 0x20 || (c >= 0x7F && c < 0xA0); }

/// No character at all: halves of pairs and the last two of each plane.
bool isNone(char32_t c) { return (c >= 0xD800 && c < 0xE000) || (c & 0xFFFEU) == 0xFFFE; }

}  // namespace

std::string xmlText(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    const auto [value, size] = firstOf(text);
    if (size == 0 || isNone(value))
      out += "\uFFFD";
    else if (value == '&')
      out += "&amp;";
    else if (value == '<')
      out += "&lt;";
    else if (value == '>')
      out += "&gt;";
    else if (value == '"')
      out += "&quot;";
    else if (isControl(value))
      out += ' ';
    else
      out += text.substr(0, size);
    text.remove_prefix(std::max<std::size_t>(1, size));
  }
  return out;
}

}  // namespace creasewright
