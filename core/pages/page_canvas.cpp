#include "pages/page_canvas.h"

#include <algorithm>
#include <vector>

#include "drawing/arrange.h"
#include "pages/marks.h"
#include "pages/text_lines.h"

namespace creasewright {
namespace {

constexpr double kTitle = 3.4;
constexpr double kDetails = 2.5;

TextItem textAt(const std::string& words, Point at, double height, Anchor anchor) {
  return {.role = Role::Legend,
          .label = Label::plain(words),
          .at = at,
          .height = height,
          .anchor = anchor};
}

std::string joined(const std::vector<std::string>& sentences) {
  std::string words;
  for (const std::string& sentence : sentences) words += (words.empty() ? "" : " ") + sentence;
  return words;
}

/// Two lines over the whole width: title and page, details and notes below.
Drawing headLine(const PageHead& head, double width) {
  const double page = textWidth(head.page, kDetails) + 4;
  const std::string notes = joined(head.notes);
  const double beside = notes.empty() ? 0 : textWidth(notes, kDetails) + 4;
  Drawing out{width, 9, {}, {}};
  out.texts.push_back(
      textAt(shortened(head.title, width - page, kTitle), {0, 5.2}, kTitle, Anchor::Left));
  out.texts.push_back(textAt(head.page, {width, 5.2}, kDetails, Anchor::Right));
  out.texts.push_back(
      textAt(shortened(head.details, width - beside, kDetails), {0, 1}, kDetails, Anchor::Left));
  if (!notes.empty()) out.texts.push_back(textAt(notes, {width, 1}, kDetails, Anchor::Right));
  return out;
}

/// A sentence broken to `widest` mm, its last line first.
std::vector<std::string> linesUp(const std::string& sentence, double widest) {
  std::vector<std::string> lines = wrapped(sentence, widest, kDetails);
  std::ranges::reverse(lines);
  return lines;
}

/// The same as a block no wider than its words and `widest` mm.
Drawing headBlock(const PageHead& head, double widest) {
  const std::string title = shortened(head.title, widest, kTitle);
  const std::string details = shortened(head.details, widest, kDetails);
  Drawing out{std::max({textWidth(title, kTitle), textWidth(details, kDetails),
                        textWidth(head.page, kDetails)}),
              0,
              {},
              {}};
  double y = 0.9;
  const auto add = [&](const std::string& words) {
    out.texts.push_back(textAt(words, {0, y}, kDetails, Anchor::Left));
    out.width = std::max(out.width, textWidth(words, kDetails));
    y += 3.6;
  };
  add(head.page);
  for (auto note = head.notes.rbegin(); note != head.notes.rend(); ++note)
    for (const std::string& line : linesUp(*note, widest)) add(line);
  add(details);
  out.texts.push_back(textAt(title, {0, y + 0.1}, kTitle, Anchor::Left));
  out.height = y + 3.9;
  return out;
}

}  // namespace

PageCanvas::PageCanvas(const PageFrame& frame)
    : frame_(frame),
      drawing_{frame.width, frame.height, {}, {}},
      space_(frame.width, frame.height),
      outside_(frame.width, frame.height) {}

void PageCanvas::put(const Drawing& content) {
  append(drawing_, content);
  for (const PathItem& item : content.paths) {
    for (Polyline line : item.rings) {
      if (item.closed && !line.empty()) line.push_back(line.front());
      space_.blockLine(line);
      outside_.blockLine(line);
    }
  }
}

void PageCanvas::avoid(const Bounds& box) { outside_.block(box); }

bool PageCanvas::place(const Drawing& part, Point wish) {
  const Point gap{gap_, gap_};
  const Bounds within{frame_.printable.low - gap, frame_.printable.high + gap};
  const auto find = [&](const FreeSpace& space) {
    return space.find(part.width + 2 * gap_, part.height + 2 * gap_, within, wish - gap);
  };
  std::optional<Point> at = find(outside_);
  if (!at) at = find(space_);
  if (!at) return false;
  at = *at + gap;
  append(drawing_, moved(part, *at));
  const Bounds box{*at, *at + Point{part.width, part.height}};
  space_.block(box);
  outside_.block(box);
  return true;
}

bool PageCanvas::placeHead(const PageHead& head) {
  const Bounds& all = frame_.printable;
  const Point top{all.low.x, all.high.y - 9};
  const Drawing line = headLine(head, all.width());
  // Only a free strip across the whole page takes the line; else a block finds its place.
  if (outside_.isFree({top, top + Point{line.width, line.height}})) return place(line, top);
  for (const double widest : {0.8 * all.width(), 110.0, 80.0, 60.0}) {
    const Drawing block = headBlock(head, widest);
    if (place(block, {all.low.x, all.high.y - block.height})) return true;
    const Drawing turned = turnedLeft(block);
    if (place(turned, {all.low.x, all.high.y - turned.height})) return true;
  }
  return false;
}

bool PageCanvas::placeBars() {
  const Point low = frame_.printable.low;
  const std::vector<Drawing> bars = checkBars();
  const double sideways = frame_.left.low.y;
  return place(bars[2], {low.x, sideways}) && place(bars[3], {low.x + 5, sideways}) &&
         place(bars[0], {low.x, low.y + 5}) && place(bars[1], low);
}

}  // namespace creasewright
