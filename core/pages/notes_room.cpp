#include "pages/notes_room.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <utility>

#include "drawing/arrange.h"
#include "pages/free_space.h"

namespace creasewright {
namespace {

constexpr double kNotesApart = 2;  // mm from everything else
constexpr std::array kWidths{230.0, 160.0, 120.0, 90.0, 70.0, 60.0, 56.0, 50.0};
constexpr double kColumnGap = 6;

bool isWaste(const PathItem& item) { return item.role == Role::Waste && item.filled; }

/// What a page leaves free beside its net, waste counted as free.
FreeSpace spaceOn(const Drawing& page, const std::vector<Polygon>& net, const Wording& wording) {
  FreeSpace space(page.width, page.height);
  for (const PathItem& item : page.paths) {
    if (isWaste(item)) continue;
    for (Polyline line : item.rings) {
      if (item.closed && !line.empty()) line.push_back(line.front());
      space.blockLine(line);
    }
  }
  for (const TextItem& text : page.texts) space.block(bounds(textBox(text, wording(text.label))));
  for (const Polygon& ring : net) space.blockArea(ring);
  return space;
}

FreeSpace withoutWaste(FreeSpace space, const Drawing& page) {
  for (const PathItem& item : page.paths)
    if (isWaste(item))
      for (const Polygon& ring : item.rings) space.blockArea(ring);
  return space;
}

/// All columns below one another, or the first two beside one another.
Drawing arranged(const std::vector<std::vector<NoteLine>>& columns, double width, bool pair,
                 const Wording& wording) {
  if (!pair) {
    std::vector<NoteLine> all;
    for (const std::vector<NoteLine>& each : columns)
      all.insert(all.end(), each.begin(), each.end());
    return noteBlock(all, width, wording);
  }
  const double left = (width - kColumnGap) * 0.58;
  Drawing first = noteBlock(columns[0], left, wording);
  const Drawing second = noteBlock(columns[1], width - kColumnGap - left, wording);
  const double high = std::max(first.height, second.height);
  Drawing out = moved(first, {0, high - first.height});
  append(out, moved(second, {first.width + kColumnGap, high - second.height}));
  out.width = first.width + kColumnGap + second.width;
  out.height = high;
  return out;
}

/// The lower left corner of a free place, the nearest to the upper left corner.
std::optional<Point> firstFree(const FreeSpace& space, double width, double height,
                               const Bounds& within) {
  return space.find(width, height, within, {within.low.x, within.high.y - height});
}

}  // namespace

Drawing noteBlock(const std::vector<NoteLine>& lines, double width, const Wording& wording) {
  constexpr double kEndless = 10'000;
  std::vector<Drawing> set = setNotes(lines, {{0, 0}, {width, kEndless}});
  if (set.size() != 1) return {};
  const Bounds box = textBounds(set.front(), wording);
  Drawing out = moved(std::move(set.front()), Point{} - box.low);
  out.width = box.width();
  out.height = box.height();
  return out;
}

Bounds textBounds(const Drawing& drawing, const Wording& wording) {
  Polygon corners;
  for (const TextItem& text : drawing.texts)
    for (const Point& p : textBox(text, wording(text.label))) corners.push_back(p);
  return bounds(corners);
}

std::optional<Drawing> notesInFreeRoom(const std::vector<std::vector<NoteLine>>& columns,
                                       const Drawing& page, const std::vector<Polygon>& net,
                                       const Bounds& printable, const Wording& wording) {
  const Point gap{kNotesApart, kNotesApart};
  const FreeSpace waste = spaceOn(page, net, wording);
  const FreeSpace margin = withoutWaste(waste, page);
  const bool two = columns.size() == 2 && !columns[1].empty();
  std::map<std::pair<double, bool>, Drawing> known;  // each is tried lying and turned, in two rooms
  for (const bool turned : {false, true})
    for (const FreeSpace* space : {&margin, &waste})
      for (const double width : kWidths)
        for (const bool pair : {false, true}) {
          if (pair && (!two || width < 90)) continue;
          const auto made = known.find({width, pair});
          Drawing notes = made != known.end()
                              ? made->second
                              : known[{width, pair}] = arranged(columns, width, pair, wording);
          if (turned) notes = turnedLeft(std::move(notes));
          const auto at =
              firstFree(*space, notes.width + 2 * kNotesApart, notes.height + 2 * kNotesApart,
                        {printable.low - gap, printable.high + gap});
          if (at) return moved(std::move(notes), *at + gap);
        }
  return std::nullopt;
}

}  // namespace creasewright
