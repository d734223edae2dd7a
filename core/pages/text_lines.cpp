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
  const std::string ellipsis = "\u2026";
  std::string text = words;
  while (!text.empty() && textWidth(text, height) > width) {
    text.resize(text.size() - (text.ends_with(ellipsis) ? ellipsis.size() : 0));
    // Take one whole UTF-8 character away.
    while (!text.empty() && (static_cast<unsigned char>(text.back()) & 0xC0U) == 0x80U) {
      text.pop_back();
    }
    if (!text.empty()) text.pop_back();
    if (!text.empty()) text += ellipsis;
  }
  return text;
}

}  // namespace creasewright
