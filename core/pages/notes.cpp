#include "pages/notes.h"

#include "pages/text_lines.h"

namespace creasewright {

std::vector<Drawing> setNotes(const std::vector<NoteLine>& lines, const Bounds& area) {
  std::vector<Drawing> pages;
  double y = area.low.y;
  for (const NoteLine& line : lines) {
    double before = line.before;
    for (const std::string& words : wrapped(line.words, area.width() - line.indent, line.height)) {
      const double step = 1.5 * line.height;
      y -= before + step;
      before = 0;
      if (pages.empty() || y - 0.25 * line.height < area.low.y) {
        pages.emplace_back();
        y = area.high.y - step;
      }
      pages.back().texts.push_back({.role = Role::Legend,
                                    .label = Label::plain(words),
                                    .at = {area.low.x + line.indent, y + 0.25 * line.height},
                                    .height = line.height});
    }
  }
  return pages;
}

}  // namespace creasewright
