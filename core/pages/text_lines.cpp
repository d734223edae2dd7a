#include "pages/text_lines.h"

#include <cstddef>

#include "drawing/arrange.h"

namespace creasewright {

std::vector<std::string> wrapped(const std::string& words, double width, double height) {
  std::vector<std::string> lines;
  std::string line;
  for (std::size_t start = 0; start < words.size();) {
    const std::size_t end = std::min(words.find(' ', start), words.size());
    const std::string word = words.substr(start, end - start);
    start = end + 1;
    if (!line.empty() && textWidth(line + ' ' + word, height) > width) {
      lines.push_back(std::move(line));
      line.clear();
    }
    line += (line.empty() ? "" : " ") + word;
  }
  if (!line.empty()) lines.push_back(std::move(line));
  return lines;
}

std::string shortened(const std::string& words, double width, double height) {
  if (textWidth(words, height) <= width) return words;
  // The width goes by the number of characters: as many as fit beside the ellipsis.
  const std::string ellipsis = "\u2026";
  std::string text;
  for (std::size_t at = 0; at < words.size();) {
    std::size_t end = at + 1;
    while (end < words.size() && (static_cast<unsigned char>(words[end]) & 0xC0U) == 0x80U) ++end;
    const std::string longer = text + words.substr(at, end - at);
    if (textWidth(longer + ellipsis, height) > width) break;
    text = longer;
    at = end;
  }
  return text.empty() ? text : text + ellipsis;
}

}  // namespace creasewright
