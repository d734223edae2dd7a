#include "kits/layout_drawing.h"

#include <algorithm>

#include "drawing/hatching.h"
#include "kits/trim_steps.h"

namespace creasewright {
namespace {

constexpr double kType = 2.6;  // mm

Polygon rectangleOf(const CutNode& node, double scale) {
  const Point low{node.x.mm() * scale, node.y.mm() * scale};
  const Point high{low.x + node.width.mm() * scale, low.y + node.height.mm() * scale};
  return {low, {high.x, low.y}, high, {low.x, high.y}};
}

void drawBlank(const CutNode& node, double scale, Drawing& out) {
  const Polygon ring = rectangleOf(node, scale);
  out.paths.push_back({.role = Role::Face, .rings = {ring}, .closed = true, .filled = true});
  out.paths.push_back({.role = Role::Edge, .rings = {ring}, .closed = true});
  const double room = std::min(ring[1].x - ring[0].x, ring[2].y - ring[1].y);
  const double type = std::min(4.0, room * 0.6);
  if (type < 1.2) return;
  const Point middle = (ring[0] + ring[2]) / 2;
  out.texts.push_back({Role::Legend, Label::plain(demandLetter(node.demand)),
                       middle - Point{0, type * 0.35}, type, Anchor::Centre, 0});
}

void drawOffcut(const CutNode& node, double scale, Drawing& out) {
  const Polygon ring = rectangleOf(node, scale);
  PathItem lines{.role = Role::Waste, .rings = {}};
  for (const Segment& s : hatch({ring}, 1.8, -45)) lines.rings.push_back({s.a, s.b});
  if (!lines.rings.empty()) out.paths.push_back(std::move(lines));
}

/// The number stands just beside the start of its cut.
void drawCut(const TrimCut& cut, double scale, Drawing& out) {
  const Point from{cut.x.mm() * scale, cut.y.mm() * scale};
  const double length = cut.length.mm() * scale;
  const Point to = cut.upright ? from + Point{0, length} : from + Point{length, 0};
  out.paths.push_back({.role = Role::Cut, .rings = {{from, to}}});
  const Point at = cut.upright ? from + Point{0.5, std::min(length * 0.06 + 0.6, 2.0)}
                               : from + Point{std::min(length * 0.06 + 0.6, 2.0), 0.6};
  out.texts.push_back(
      {Role::Dimension, Label::plain(std::to_string(cut.number)), at, kType, Anchor::Left, 0});
}

}  // namespace

std::string demandLetter(int demand) {
  std::string letters;
  for (int rest = demand; rest >= 0; rest = rest / 26 - 1)
    letters.insert(letters.begin(), static_cast<char>('A' + rest % 26));
  return letters;
}

Drawing drawLayout(const Layout& layout, double width, double height) {
  const double scale = std::min(width / layout.sheet.width.mm(), height / layout.sheet.height.mm());
  Drawing out{layout.sheet.width.mm() * scale, layout.sheet.height.mm() * scale, {}, {}};
  eachNode(layout.sheet, [&](const CutNode& node) {
    if (node.kind == CutNode::Kind::Blank) drawBlank(node, scale, out);
    if (node.kind == CutNode::Kind::Offcut) drawOffcut(node, scale, out);
  });
  for (const TrimCut& cut : trimSteps(layout)) drawCut(cut, scale, out);
  out.paths.push_back(
      {.role = Role::Positions, .rings = {rectangleOf(layout.sheet, scale)}, .closed = true});
  return out;
}

}  // namespace creasewright
