#include "pages/part_words.h"

#include <algorithm>
#include <cmath>

#include "drawing/arrange.h"

namespace creasewright {
namespace {

constexpr double kReadingHeight = 2.6;
constexpr double kNameHeight = 2.4;
constexpr double kApartFromEdge = 1.1;  // mm, beyond the cell of the edge itself

Point centre(const Bounds& box) { return (box.low + box.high) / 2; }

bool inside(const Bounds& box, const Bounds& room) {
  return box.low.x >= room.low.x && box.low.y >= room.low.y && box.high.x <= room.high.x &&
         box.high.y <= room.high.y;
}

/// The text with its box's middle at `middle`.
TextItem centredAt(TextItem text, Point middle, const Wording& wording) {
  text.at = text.at + middle - centre(boxOf(text, wording));
  return text;
}

/// Ways to set a reading, the best first.
std::vector<TextItem> readingPlaces(const EdgeReading& reading, Point at, const Wording& wording) {
  const double along = std::abs(reading.out.x) > 0.5 ? 90 : 0;
  const Point tangent = turnLeft(reading.out);
  std::vector<TextItem> places;
  const auto add = [&](double turn, double far, bool within, double aside) {
    TextItem text{.role = Role::Dimension,
                  .label = reading.label,
                  .at = {},
                  .height = kReadingHeight,
                  .anchor = Anchor::Centre,
                  .turnDegrees = turn,
                  .bold = true,
                  .like = reading.like};
    const Bounds box = boxOf(text, wording);
    const double depth = std::abs(reading.out.x) > 0.5 ? box.width() : box.height();
    const double span = std::abs(reading.out.x) > 0.5 ? box.height() : box.width();
    const Point out = within ? reading.out * -1 : reading.out;
    const Point middle = at + out * (kApartFromEdge + far + depth / 2) +
                         tangent * (aside * (span / 2 + kApartFromEdge));
    places.push_back(centredAt(text, middle, wording));
  };
  for (const double far : {0.0, 3.6, 7.2}) {
    add(along, far, false, 0);
    add(90 - along, far, false, 0);
  }
  for (const double aside : {1.0, -1.0})
    for (const double far : {0.0, 4.0, 9.0})
      for (const double turn : {along, 90 - along}) add(turn, far, true, aside);
  return places;
}

}  // namespace

void putEdgeReadings(PageCanvas& canvas, const PartOnPage& part, const Bounds& own,
                     const Wording& wording) {
  constexpr double kOnEdge = 1e-6;
  constexpr double kTick = 3;  // mm
  Drawing out;
  for (const EdgeReading& reading : part.sheet->readings) {
    if (!inside({reading.at, reading.at},
                {own.low - Point{kOnEdge, kOnEdge}, own.high + Point{kOnEdge, kOnEdge}}))
      continue;
    const Point at = reading.at + part.shift;
    for (TextItem& text : readingPlaces(reading, at, wording)) {
      const Bounds box = boxOf(text, wording);
      if (!inside(box, canvas.frame().printable) || !canvas.isFree(box)) continue;
      canvas.block(box);
      out.texts.push_back(std::move(text));
      out.paths.push_back({.role = Role::Dimension,
                           .rings = {{at, at - reading.out * kTick}},
                           .like = reading.like});
      break;
    }
  }
  canvas.put(out);
}

void putPanelNames(PageCanvas& canvas, const PartOnPage& part, const Wording& wording) {
  Drawing out;
  for (const PanelName& name : part.sheet->names) {
    Polygon ring = name.outline;
    for (Point& p : ring) p = p + part.shift;
    Bounds room = bounds(ring);
    room.low = {std::max(room.low.x, part.box.low.x), std::max(room.low.y, part.box.low.y)};
    room.high = {std::min(room.high.x, part.box.high.x), std::min(room.high.y, part.box.high.y)};
    for (const double turn : {0.0, 90.0}) {
      TextItem text{.role = Role::Dimension,
                    .label = Label::plain(name.words),
                    .at = {},
                    .height = kNameHeight,
                    .anchor = Anchor::Centre,
                    .turnDegrees = turn};
      const Bounds size = boxOf(text, wording);
      const auto low = canvas.lines().find(size.width(), size.height(), room,
                                           centre(room) - Point{size.width(), size.height()} / 2);
      if (!low) continue;
      const Bounds box{*low, *low + Point{size.width(), size.height()}};
      const Polygon corners{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
      if (std::ranges::any_of(corners, [&](Point p) { return locate(p, ring) != Side::Inside; }))
        continue;
      canvas.block(box);
      out.texts.push_back(centredAt(std::move(text), centre(box), wording));
      break;
    }
  }
  canvas.put(out);
}

namespace {

/// An arrow 5 mm long to `up`, about (2.5, 0).
PathItem upArrow(Point up) {
  constexpr double kHalf = 2.4;
  constexpr double kBarb = 1.5;
  const Point middle{2.5, 0};
  const Point tip = middle + up * kHalf;
  const Point side = turnLeft(up);
  return {.role = Role::Legend,
          .rings = {{middle - up * kHalf, tip},
                    {tip - (up - side) * kBarb, tip, tip - (up + side) * kBarb}},
          .like = Role::Cut};
}

/// The label as a small drawing of `label.lines` below one another, or all in one line.
Drawing labelBlock(const PartLabel& label, Point up, bool oneLine) {
  constexpr double kArrow = 6.2;
  constexpr double kName = 2.8;
  constexpr double kLine = 2.4;
  constexpr double kStep = 3.4;
  Drawing out;
  std::vector<std::string> lines = label.lines;
  if (oneLine) {
    std::string all;
    for (const std::string& line : lines) all += (all.empty() ? "" : " \u00B7 ") + line;
    lines.assign(all.empty() ? 0 : 1, all);
  }
  const bool beside = oneLine && !label.name.empty();  // the words after the name
  const double rows = (label.name.empty() || beside ? 0 : 1) + static_cast<double>(lines.size());
  out.height = std::max(5.2, std::max(1.0, rows) * kStep + 0.6);
  const auto add = [&](const std::string& words, Point at, double height, bool bold) {
    out.texts.push_back({.role = Role::Legend,
                         .label = Label::plain(words),
                         .at = at,
                         .height = height,
                         .bold = bold});
    out.width = std::max(out.width, at.x + textWidth(words, height));
  };
  double y = out.height - kStep;
  if (rows * kStep + 0.6 < out.height)
    y = (out.height - rows * kStep) / 2 + (rows - 1) * kStep + 0.9;
  double x = kArrow;
  if (!label.name.empty()) {
    add(label.name, {x, y}, kName, true);
    if (beside)
      x += textWidth(label.name, kName) + 2;
    else
      y -= kStep;
  }
  for (const std::string& line : lines) {
    add(line, {x, y}, kLine, false);
    y -= kStep;
  }
  out.width = std::max(out.width, 5.0);
  PathItem arrow = upArrow(up);
  for (Polygon& ring : arrow.rings)
    for (Point& p : ring) p = p + Point{0, out.height / 2};
  out.paths.push_back(std::move(arrow));
  return out;
}

}  // namespace

bool putPartLabel(PageCanvas& canvas, const PartOnPage& part, const PartLabel& label) {
  const Bounds& box = part.box;
  const auto attempt = [&](auto place) {
    for (const bool oneLine : {false, true})
      for (const bool turned : {false, true}) {
        // The block is turned with its words; its arrow must still show the part's top.
        const Point up = turned ? turnLeft(part.sheet->up) * -1 : part.sheet->up;
        Drawing block = labelBlock(label, up, oneLine);
        if (turned) block = turnedLeft(std::move(block));
        if (place(block)) return true;
      }
    return false;
  };
  const auto over = [&](const Drawing& block) {
    const double right = std::max(box.high.x, box.low.x + block.width) + 2;
    const double far = block.height + 2;
    const Bounds above{{box.low.x - 1, box.high.y}, {right, box.high.y + far}};
    const Bounds below{{box.low.x - 1, box.low.y - far}, {right, box.low.y}};
    return canvas.place(block, {box.low.x, box.high.y + 1}, PageRoom::Margin, above) ||
           canvas.place(block, {box.low.x, box.low.y - block.height - 1}, PageRoom::Margin, below);
  };
  const auto within = [&](const Drawing& block) {
    return canvas.place(block, box.low + Point{2, 2}, PageRoom::Card, box);
  };
  const auto beside = [&](const Drawing& block) {
    const double far = block.width + 2;
    return canvas.place(block, {box.high.x + 1, box.high.y - block.height}, PageRoom::Margin,
                        Bounds{{box.low.x - far, box.low.y}, {box.high.x + far, box.high.y}});
  };
  if (attempt(over) || attempt(within) || attempt(beside)) return true;
  // A name is enough where there is little room, and where there is none it stands near by.
  if (!label.lines.empty()) return putPartLabel(canvas, part, {label.name, {}});
  const Drawing block = labelBlock(label, part.sheet->up, true);
  return canvas.place(block, {box.low.x, box.high.y + 1}, PageRoom::Card) ||
         canvas.place(turnedLeft(labelBlock(label, turnLeft(part.sheet->up) * -1, true)),
                      {box.low.x, box.high.y + 1}, PageRoom::Card);
}

}  // namespace creasewright
