#include "kits/layout_drawing.h"

#include <algorithm>
#include <cmath>

#include "cutting/trim_steps.h"
#include "drawing/hatching.h"

namespace creasewright {
namespace {

constexpr double kType = 2.6;  // mm

Polygon rectangleOf(const CutNode& node, double scale) {
  const Point low{node.x.mm() * scale, node.y.mm() * scale};
  const Point high{low.x + node.width.mm() * scale, low.y + node.height.mm() * scale};
  return {low, {high.x, low.y}, high, {low.x, high.y}};
}

void drawBlank(const CutNode& node, double scale, int firstLetter, Drawing& out) {
  const Polygon ring = rectangleOf(node, scale);
  out.paths.push_back({.role = Role::Face, .rings = {ring}, .closed = true, .filled = true});
  out.paths.push_back({.role = Role::Edge, .rings = {ring}, .closed = true});
  const double room = std::min(ring[1].x - ring[0].x, ring[2].y - ring[1].y);
  const double type = std::min(4.0, room * 0.6);
  if (type < 1.2) return;
  const Point middle = (ring[0] + ring[2]) / 2;
  out.texts.push_back({Role::Legend, Label::plain(demandLetter(firstLetter + node.demand)),
                       middle - Point{0, type * 0.35}, type, Anchor::Centre, 0});
}

void drawOffcut(const CutNode& node, double scale, Drawing& out) {
  const Polygon ring = rectangleOf(node, scale);
  PathItem lines{.role = Role::Waste, .rings = {}};
  for (const Segment& s : hatch({ring}, 1.8, -45)) lines.rings.push_back({s.a, s.b});
  if (!lines.rings.empty()) out.paths.push_back(std::move(lines));
}

/// Whether a number would stand on another one.
bool isCovered(const TextItem& number, const std::vector<TextItem>& others) {
  return std::ranges::any_of(
      others,
      [&](const TextItem& other) {
        return std::abs(number.at.x - other.at.x) < 1.5 * kType &&
               std::abs(number.at.y - other.at.y) < kType;
      });
}

/// The number stands just beside the start of the step's first cut in every part.
void drawStep(const TrimStep& step, double scale, std::vector<TextItem>& numbers, Drawing& out) {
  for (std::size_t i = 0; i < step.lines.size(); ++i) {
    const CutLine& cut = step.lines[i];
    const Point from{cut.x.mm() * scale, cut.y.mm() * scale};
    const double length = cut.length.mm() * scale;
    const Point to = step.upright ? from + Point{0, length} : from + Point{length, 0};
    out.paths.push_back({.role = Role::Cut, .rings = {{from, to}}});
    if (i % static_cast<std::size_t>(step.cuts) != 0) continue;
    const double in = std::min(length * 0.06 + 0.6, 2.0);
    TextItem number{Role::Dimension,
                    Label::plain(std::to_string(step.number)),
                    from + (step.upright ? Point{0.5, in} : Point{in, 0.6}),
                    kType,
                    Anchor::Left,
                    0};
    const Point along = step.upright ? Point{0, kType + 0.4} : Point{kType + 0.8, 0};
    for (double left = length - in - 2 * kType; left > 0 && isCovered(number, numbers);
         left -= kType)
      number.at = number.at + along;
    numbers.push_back(number);
  }
}

}  // namespace

std::string demandLetter(int demand) {
  std::string letters;
  for (int rest = demand; rest >= 0; rest = rest / 26 - 1)
    letters.insert(letters.begin(), static_cast<char>('A' + rest % 26));
  return letters;
}

Drawing drawLayout(const Layout& layout, double width, double height, int firstLetter) {
  const double scale = std::min(width / layout.sheet.width.mm(), height / layout.sheet.height.mm());
  Drawing out{layout.sheet.width.mm() * scale, layout.sheet.height.mm() * scale, {}, {}};
  eachNode(layout.sheet, [&](const CutNode& node) {
    if (node.kind == CutNode::Kind::Blank) drawBlank(node, scale, firstLetter, out);
    if (node.kind == CutNode::Kind::Offcut) drawOffcut(node, scale, out);
  });
  std::vector<TextItem> numbers;
  for (const TrimStep& step : trimSteps(layout)) drawStep(step, scale, numbers, out);
  out.texts.insert(out.texts.end(), numbers.begin(), numbers.end());
  out.paths.push_back(
      {.role = Role::Positions, .rings = {rectangleOf(layout.sheet, scale)}, .closed = true});
  return out;
}

}  // namespace creasewright
