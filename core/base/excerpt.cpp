#include "base/excerpt.h"

#include <algorithm>
#include <cstddef>

namespace creasewright {
namespace {

constexpr std::size_t kLongest = 60;

/// Bytes of the UTF-8 character that starts with `lead`, 0 when none can.
std::size_t characterSize(unsigned char lead) {
  if (lead < 0x80) return 1;
  if (lead >= 0xC2 && lead < 0xE0) return 2;
  if (lead >= 0xE0 && lead < 0xF0) return 3;
  if (lead >= 0xF0 && lead < 0xF5) return 4;
  return 0;
}

bool isContinuation(char byte) { return (static_cast<unsigned char>(byte) & 0xC0) == 0x80; }

/// The whole character at the start of `text`, empty when the bytes there are not one.
std::string_view firstCharacter(std::string_view text) {
  const std::size_t size = characterSize(static_cast<unsigned char>(text.front()));
  if (size == 0 || size > text.size()) return {};
  for (std::size_t i = 1; i < size; ++i)
    if (!isContinuation(text[i])) return {};
  return text.substr(0, size);
}

bool isControl(char byte) { return static_cast<unsigned char>(byte) < 0x20 || byte == 0x7F; }

}  // namespace

std::string excerpt(std::string_view text) {
  std::string shown;
  while (!text.empty()) {
    const std::string_view character = firstCharacter(text);
    if (shown.size() + std::max<std::size_t>(1, character.size()) > kLongest) return shown + "...";
    if (character.empty())
      shown += '?';
    else if (isControl(character.front()))
      shown += ' ';
    else
      shown += character;
    text.remove_prefix(character.empty() ? 1 : character.size());
  }
  return shown;
}

}  // namespace creasewright
