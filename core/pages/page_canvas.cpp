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

/// Three lines over the whole width: title and page, details, notes.
Drawing headLine(const PageHead& head, double width) {
  const double page = textWidth(head.page, kDetails) + 4;
  Drawing out{width, kHeadRoom - 1, {}, {}};
  out.texts.push_back(
      textAt(shortened(head.title, width - page, kTitle), {0, 8.4}, kTitle, Anchor::Left));
  out.texts.back().bold = true;
  out.texts.push_back(textAt(head.page, {width, 8.4}, kDetails, Anchor::Right));
  out.texts.push_back(
      textAt(shortened(head.details, width, kDetails), {0, 4.6}, kDetails, Anchor::Left));
  out.texts.push_back(
      textAt(shortened(joined(head.notes), width, kDetails), {0, 1}, kDetails, Anchor::Left));
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
  Drawing out{std::max(textWidth(title, kTitle), textWidth(head.page, kDetails)), 0, {}, {}};
  double y = 0.9;
  const auto add = [&](const std::string& words) {
    out.texts.push_back(textAt(words, {0, y}, kDetails, Anchor::Left));
    out.width = std::max(out.width, textWidth(words, kDetails));
    y += 3.6;
  };
  add(head.page);
  for (auto note = head.notes.rbegin(); note != head.notes.rend(); ++note)
    for (const std::string& line : linesUp(*note, widest)) add(line);
  for (const std::string& line : linesUp(head.details, widest)) add(line);
  out.texts.push_back(textAt(title, {0, y + 0.1}, kTitle, Anchor::Left));
  out.texts.back().bold = true;
  out.height = y + 3.9;
  return out;
}

}  // namespace

PageCanvas::PageCanvas(const PageFrame& frame)
    : frame_(frame),
      drawing_{frame.width, frame.height, {}, {}},
      spaces_(3, FreeSpace(frame.width, frame.height)) {}

void PageCanvas::put(const Drawing& content) {
  append(drawing_, content);
  for (const PathItem& item : content.paths) {
    if (item.filled && item.role == Role::Waste) continue;  // words stand on a tint
    if (item.filled && item.role == Role::Face) {
      for (const Polygon& ring : item.rings)
        for (FreeSpace& space : spaces_) space.blockArea(ring);
      continue;
    }
    for (Polyline line : item.rings) {
      if (item.closed && !line.empty()) line.push_back(line.front());
      for (FreeSpace& space : spaces_) space.blockLine(line);
    }
  }
  // What a piece itself says; other words of the page have taken their room already.
  for (const TextItem& text : content.texts)
    if (text.label.code.empty()) block(bounds(textBox(text, text.label.literal)));
}

void PageCanvas::lay(const Drawing& ground) { append(drawing_, ground); }

void PageCanvas::avoid(const Bounds& box, const std::vector<Polygon>& card) {
  spaces_[static_cast<std::size_t>(PageRoom::Margin)].block(box);
  for (const Polygon& ring : card)
    spaces_[static_cast<std::size_t>(PageRoom::Waste)].blockArea(ring);
}

void PageCanvas::block(const Bounds& box) {
  for (FreeSpace& space : spaces_) space.block(box);
}

bool PageCanvas::place(const Drawing& part, Point wish, PageRoom most,
                       const std::optional<Bounds>& within) {
  for (const PageRoom room : {PageRoom::Margin, PageRoom::Waste, PageRoom::Card})
    if (room <= most && placeIn(room, part, wish, within)) return true;
  return false;
}

bool PageCanvas::placeIn(PageRoom room, const Drawing& part, Point wish,
                         const std::optional<Bounds>& within) {
  const Point gap{gap_, gap_};
  Bounds area{frame_.printable.low - gap, frame_.printable.high + gap};
  if (within) {
    area.low = {std::max(area.low.x, within->low.x), std::max(area.low.y, within->low.y)};
    area.high = {std::min(area.high.x, within->high.x), std::min(area.high.y, within->high.y)};
  }
  std::optional<Point> at = spaces_[static_cast<std::size_t>(room)].find(
      part.width + 2 * gap_, part.height + 2 * gap_, area, wish - gap);
  if (!at) return false;
  at = *at + gap;
  depth_ = std::max(depth_, room);
  append(drawing_, moved(part, *at));
  block({*at, *at + Point{part.width, part.height}});
  return true;
}

bool PageCanvas::placeHead(const PageHead& head) {
  const Bounds& all = frame_.printable;
  const Point top{all.low.x, all.high.y - (kHeadRoom - 1)};
  const Drawing line = headLine(head, all.width());
  // Only a free strip across the whole page takes the line; else a block finds its place.
  if (spaces_.front().isFree({top, top + Point{line.width, line.height}})) {
    const double gap = std::exchange(gap_, 0);  // just as high as the room that is kept for it
    const bool placed = place(line, top);
    gap_ = gap;
    if (placed) return true;
  }
  for (const double widest : {0.8 * all.width(), 110.0, 80.0, 60.0}) {
    const Drawing block = headBlock(head, widest);
    if (place(block, {all.low.x, all.high.y - block.height})) return true;
    const Drawing turned = turnedLeft(block);
    if (place(turned, {all.low.x, all.high.y - turned.height})) return true;
  }
  return false;
}

bool PageCanvas::placeBars() {
  const Bounds& all = frame_.printable;
  const double room = std::min(all.width(), all.height());
  const std::vector<Drawing> bars = checkBars(room);
  const Point foot = all.low;
  const Point left = all.low + Point{0, kBarRoom};
  const auto both = [&](std::size_t first, Point wish, Point step) {
    const PageCanvas before = *this;
    if (place(bars[first], wish + step) && place(bars[first + 1], wish)) return true;
    *this = before;
    return place(checkBarPair(room, first > 0), wish);
  };
  return both(2, left, {6, 0}) && both(0, foot, {0, 6});
}

}  // namespace creasewright
