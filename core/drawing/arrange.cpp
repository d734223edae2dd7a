#include "drawing/arrange.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "drawing/set_words.h"
#include "geometry/clip_to_box.h"
#include "units/angle.h"

namespace creasewright {
namespace {

bool within(Point p, const Bounds& window) {
  return p.x >= window.low.x && p.x <= window.high.x && p.y >= window.low.y && p.y <= window.high.y;
}

/// Liang-Barsky: the part of a->b inside the window as shares 0..1.
std::optional<std::pair<double, double>> shareInside(Point a, Point b, const Bounds& window) {
  double from = 0;
  double to = 1;
  const auto cut = [&](double step, double room) {
    if (step == 0) return room >= 0;
    const double share = room / step;
    if (step < 0)
      from = std::max(from, share);
    else
      to = std::min(to, share);
    return from <= to;
  };
  const Point d = b - a;
  if (!cut(-d.x, a.x - window.low.x) || !cut(d.x, window.high.x - a.x) ||
      !cut(-d.y, a.y - window.low.y) || !cut(d.y, window.high.y - a.y))
    return std::nullopt;
  return std::pair{from, to};
}

void clipInto(Drawing& out, const PathItem& item, const Bounds& window) {
  PathItem whole = item;
  whole.rings.clear();
  PathItem parts = whole;
  parts.closed = false;
  for (const Polygon& ring : item.rings) {
    if (std::all_of(ring.begin(), ring.end(), [&](Point p) { return within(p, window); })) {
      whole.rings.push_back(ring);
    } else if (item.filled) {
      Polygon cut = clipToBox(ring, window);
      if (cut.size() >= 3) whole.rings.push_back(std::move(cut));
    } else {
      Polyline line = ring;
      if (item.closed && !line.empty()) line.push_back(line.front());
      for (Polyline& part : clippedLine(line, window)) parts.rings.push_back(std::move(part));
    }
  }
  if (!whole.rings.empty()) out.paths.push_back(std::move(whole));
  if (!parts.rings.empty()) out.paths.push_back(std::move(parts));
}

std::size_t characters(const std::string& utf8) {
  return static_cast<std::size_t>(std::count_if(
      utf8.begin(), utf8.end(),
      [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

}  // namespace

Drawing moved(Drawing drawing, Point by) {
  for (PathItem& item : drawing.paths) carry(item, [by](Point p) { return p + by; });
  for (TextItem& text : drawing.texts) carry(text, PlaneMap{by});
  for (PictureItem& picture : drawing.pictures) picture.at = picture.at + by;
  return drawing;
}

Drawing turnedLeft(Drawing drawing) {
  const double height = drawing.height;
  const auto turn = [height](Point p) { return Point{height - p.y, p.x}; };
  for (PathItem& item : drawing.paths) carry(item, turn);
  for (TextItem& text : drawing.texts) {
    carry(text, PlaneMap{{height, 0}, {0, 1}, {-1, 0}});
    if (!text.plane) text.turnDegrees += 90;
  }
  std::swap(drawing.width, drawing.height);
  return drawing;
}

std::vector<Polyline> clippedLine(const Polyline& line, const Bounds& window) {
  std::vector<Polyline> parts;
  bool running = false;
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    const Point a = line[i];
    const Point b = line[i + 1];
    const auto share = shareInside(a, b, window);
    if (!share || share->first == share->second) {
      running = false;
      continue;
    }
    if (!running || share->first > 0) parts.push_back({a + (b - a) * share->first});
    parts.back().push_back(share->second < 1 ? a + (b - a) * share->second : b);
    running = share->second == 1;
  }
  return parts;
}

Drawing clipped(const Drawing& drawing, const Bounds& window) {
  Drawing out{drawing.width, drawing.height, {}, {}};
  for (const PathItem& item : drawing.paths) clipInto(out, item, window);
  std::copy_if(drawing.texts.begin(), drawing.texts.end(), std::back_inserter(out.texts),
               [&](const TextItem& text) {
                 return within(text.plane ? text.plane->apply(text.at) : text.at, window);
               });
  return out;
}

void append(Drawing& drawing, const Drawing& other) {
  drawing.paths.insert(drawing.paths.end(), other.paths.begin(), other.paths.end());
  drawing.texts.insert(drawing.texts.end(), other.texts.begin(), other.texts.end());
  drawing.pictures.insert(drawing.pictures.end(), other.pictures.begin(), other.pictures.end());
}

Bounds boxOf(const TextItem& text, const Wording& wording) {
  return bounds(textBox(text, wording(text.label)));
}

double textWidth(const std::string& words, double height) {
  return 0.62 * height * static_cast<double>(characters(words));
}

Polygon textBox(const TextItem& text, const std::string& words) {
  if (text.arc) {
    const Bounds box = bounds(wordsArea(text, words));
    return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
  }
  const double width = textWidth(words, text.height);
  const double shift = text.anchor == Anchor::Left     ? -text.column / 2
                       : text.anchor == Anchor::Centre ? -width / 2
                                                       : text.column / 2 - width;
  const double turn = Angle::degrees(text.turnDegrees).radians();
  const Point along{std::cos(turn), std::sin(turn)};
  const Point up = turnLeft(along);
  const Point low = text.at + along * shift - up * (0.25 * text.height);
  const Point high = up * (1.2 * text.height);
  return {low, low + along * width, low + along * width + high, low + high};
}

}  // namespace creasewright
