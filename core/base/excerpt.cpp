#include "base/excerpt.h"

#include <algorithm>
#include <cstddef>

namespace creasewright {
namespace {

constexpr std::size_t kLongestPathEnd = 120;  // bytes shown of either half

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

/// Control characters of ASCII and Latin-1 (U+0080 to U+009F), and what parts lines and paragraphs
/// (U+2028, U+2029).
bool isControl(std::string_view character) {
  const auto first = static_cast<unsigned char>(character.front());
  if (character.size() == 1) return first < 0x20 || first == 0x7F;
  if (character.size() == 2)
    return first == 0xC2 && static_cast<unsigned char>(character[1]) < 0xA0;
  return character == "\u2028" || character == "\u2029";
}

/// All of `text` on one line.
std::string oneLine(std::string_view text) {
  std::string shown;
  while (!text.empty()) {
    const std::string_view character = firstCharacter(text);
    if (character.empty())
      shown += '?';
    else if (isControl(character))
      shown += ' ';
    else
      shown += character;
    text.remove_prefix(std::max<std::size_t>(1, character.size()));
  }
  return shown;
}

/// Where a cut at or before `at` parts no character of a text from oneLine.
std::size_t cutBefore(std::string_view text, std::size_t at) {
  while (at > 0 && at < text.size() && isContinuation(text[at])) --at;
  return at;
}

}  // namespace

std::string excerpt(std::string_view text, std::size_t longest) {
  // Three bytes become one at most: more than this is never shown.
  std::string shown = oneLine(text.substr(0, 3 * longest + 4));
  if (shown.size() <= longest) return shown;
  shown.resize(cutBefore(shown, longest));
  return shown + "...";
}

std::string pathExcerpt(std::string_view path) {
  if (path.size() <= 2 * kLongestPathEnd) return oneLine(path);
  const std::string start = excerpt(path, kLongestPathEnd);
  std::string_view end = path.substr(path.size() - kLongestPathEnd);
  while (!end.empty() && isContinuation(end.front())) end.remove_prefix(1);
  return start + oneLine(end);
}

std::size_t characterCount(std::string_view text) {
  std::size_t count = 0;
  while (!text.empty()) {
    text.remove_prefix(std::max<std::size_t>(1, firstCharacter(text).size()));
    ++count;
  }
  return count;
}

}  // namespace creasewright
