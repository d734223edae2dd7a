#include "pages/text_lines.h"

#include <cstddef>

#include "drawing/arrange.h"

namespace creasewright {

namespace {

std::size_t nextCharacter(const std::string& words, std::size_t at) {
  std::size_t end = at + 1;
  while (end < words.size() && (static_cast<unsigned char>(words[end]) & 0xC0U) == 0x80U) ++end;
  return end;
}

std::vector<std::string> brokenAtSpaces(const std::string& words, double width,
                                        const MeasureLine& measure) {
  std::vector<std::string> lines;
  std::string line;
  for (std::size_t start = 0; start < words.size();) {
    const std::size_t end = std::min(words.find(' ', start), words.size());
    const std::string word = words.substr(start, end - start);
    start = end + 1;
    if (!line.empty() && measure(line + ' ' + word) > width) {
      lines.push_back(std::move(line));
      line.clear();
    }
    line += (line.empty() ? "" : " ") + word;
  }
  if (!line.empty()) lines.push_back(std::move(line));
  return lines;
}

}  // namespace

std::vector<std::string> wrapped(const std::string& words, double width,
                                 const MeasureLine& measure) {
  std::vector<std::string> lines;
  for (std::string& line : brokenAtSpaces(words, width, measure)) {
    while (measure(line) > width) {
      std::size_t fits = nextCharacter(line, 0);
      for (std::size_t end = fits; end < line.size() && measure(line.substr(0, end)) <= width;
           end = nextCharacter(line, end))
        fits = end;
      if (fits >= line.size()) break;
      lines.push_back(line.substr(0, fits));
      line.erase(0, fits);
    }
    lines.push_back(std::move(line));
  }
  return lines;
}

std::vector<std::string> wrapped(const std::string& words, double width, double height) {
  return brokenAtSpaces(
      words, width, [height](const std::string& line) { return textWidth(line, height); });
}

std::string shortened(const std::string& words, double width, double height) {
  if (textWidth(words, height) <= width) return words;
  // The width goes by the number of characters: as many as fit beside the ellipsis.
  const std::string ellipsis = "\u2026";
  std::string text;
  for (std::size_t at = 0; at < words.size();) {
    const std::size_t end = nextCharacter(words, at);
    const std::string longer = text + words.substr(at, end - at);
    if (textWidth(longer + ellipsis, height) > width) break;
    text = longer;
    at = end;
  }
  return text.empty() ? text : text + ellipsis;
}

}  // namespace creasewright
