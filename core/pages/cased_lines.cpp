#include "pages/cased_lines.h"

#include <algorithm>
#include <array>
#include <utility>

#include "drawing/arrange.h"
#include "drawing/contrast.h"
#include "drawing/role.h"
#include "geometry/polygon.h"
#include "pages/fold_drawing.h"

namespace creasewright {
namespace {

constexpr double kReadable = 3;    // to 1
constexpr double kPlateRim = 0.6;  // mm round words

bool isMark(Role role) {
  constexpr std::array kMarks{Role::Cut,     Role::Valley,    Role::Mountain, Role::Perforation,
                              Role::CutMark, Role::Dimension, Role::Positions};
  return std::ranges::find(kMarks, role) != kMarks.end();
}

/// What is printed of one part: its outline, and the colours in it.
struct Print {
  const PathItem* ground = nullptr;
  Bounds box;
  std::vector<Colour> colours;
  bool picture = false;  // of any colours

  [[nodiscard]] bool lies(Point at) const {
    if (at.x < box.low.x || at.y < box.low.y || at.x > box.high.x || at.y > box.high.y)
      return false;
    bool within = false;
    for (const Polygon& ring : ground->rings)
      if (locate(at, ring) != Side::Outside) within = !within;
    return within;
  }
  [[nodiscard]] bool hides(Colour line) const {
    return picture ||
           std::ranges::any_of(
               colours, [line](Colour each) { return contrast(line, each) < kReadable; });
  }
};

bool isPrint(const PathItem& item) {
  return item.role == Role::Face && item.filled && item.printed && !item.rings.empty();
}

/// A part's print stands together, its ground first.
std::vector<Print> printsOf(const Drawing& page) {
  std::vector<Print> prints;
  bool open = false;
  for (const PathItem& item : page.paths) {
    if (isPrint(item)) {
      if (!open) {
        prints.push_back({&item, bounds(item.rings.front()), {}, false});
        for (const Polygon& ring : item.rings)
          for (const Point& p : ring) include(prints.back().box, p);
      }
      prints.back().colours.push_back(fillColour(item));
      prints.back().picture = prints.back().picture || item.picture.has_value();
    }
    open = isPrint(item);
  }
  return prints;
}

/// Whether a line comes over print that hides it, or along its edge.
bool isHidden(const Polyline& line, Colour colour, const std::vector<Print>& prints) {
  constexpr double kStep = 1;      // mm
  constexpr double kBeside = 0.2;  // mm
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    const Point run = line[i + 1] - line[i];
    const double length = norm(run);
    if (length <= 0) continue;
    const Point beside = turnLeft(run / length) * kBeside;
    const int steps = static_cast<int>(length / kStep) + 1;
    for (int k = 0; k < steps; ++k) {
      const Point at = line[i] + run * ((k + 0.5) / steps);
      for (const Print& print : prints)
        if (print.hides(colour) && (print.lies(at + beside) || print.lies(at - beside)))
          return true;
    }
  }
  return false;
}

/// Light lines under those rings of an item that would not show; none for most.
PathItem casingOf(const PathItem& item, const std::vector<Print>& prints) {
  const Colour colour = item.colour.value_or(styleOf(item).colour);
  const double wide = styleOf(item).width * item.width * kCasing;
  PathItem casing{.role = Role::Edge,
                  .rings = {},
                  .closed = item.closed,
                  .colour = kLightEdge,
                  .width = wide / roleStyle(Role::Edge).width};
  for (const Polygon& ring : item.rings) {
    Polyline way = ring;
    if (item.closed && !ring.empty()) way.push_back(ring.front());
    if (isHidden(way, colour, prints)) casing.rings.push_back(ring);
  }
  return casing;
}

PathItem plateUnder(const TextItem& text, const Wording& wording) {
  Polygon plate = textBox(text, wording(text.label));
  const Bounds box = bounds(plate);
  const Point middle = (box.low + box.high) / 2;
  for (Point& p : plate) {
    const Point out = p - middle;
    p = p + Point{out.x > 0 ? kPlateRim : -kPlateRim, out.y > 0 ? kPlateRim : -kPlateRim};
  }
  return {
      .role = Role::Edge, .rings = {plate}, .closed = true, .filled = true, .colour = kLightEdge};
}

}  // namespace

Drawing casedLines(Drawing page, const Wording& wording) {
  const std::vector<Print> prints = printsOf(page);
  std::vector<PathItem> under;
  for (const PathItem& item : page.paths) {
    if (item.filled || !isMark(item.role)) continue;
    PathItem casing = casingOf(item, prints);
    if (!casing.rings.empty()) under.push_back(std::move(casing));
  }
  for (const TextItem& text : page.texts) {
    if (!isMark(text.role) && text.role != Role::Legend) continue;
    const Polygon box = textBox(text, wording(text.label));
    Polyline round = box;
    round.push_back(box.front());
    if (isHidden(round, textColour(text), prints)) under.push_back(plateUnder(text, wording));
  }
  std::ranges::move(under, std::back_inserter(page.paths));
  return page;
}

}  // namespace creasewright
