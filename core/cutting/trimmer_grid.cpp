#include "cutting/trimmer_grid.h"

#include <algorithm>
#include <array>
#include <optional>

namespace creasewright {
namespace {

using Kind = CutNode::Kind;

/// Along the width and the height.
using Sides = std::array<Length, 2>;

Sides sidesOf(const CutNode& node) { return {node.width, node.height}; }

std::size_t along(const CutNode& cut) { return cut.upright ? 0 : 1; }

/// What a part takes with all its blanks rounded up.
Sides needOf(const CutNode& node, ToolGrid grid) {
  if (node.kind == Kind::Offcut) return {};
  if (node.kind == Kind::Blank) return {grid.roundUp(node.width), grid.roundUp(node.height)};
  const Sides first = needOf(node.parts[0], grid);
  const Sides second = needOf(node.parts[1], grid);
  const std::size_t way = along(node);
  Sides need;
  need.at(way) = first.at(way) + second.at(way);
  need.at(1 - way) = std::max(first.at(1 - way), second.at(1 - way));
  return need;
}

class Placing {
 public:
  explicit Placing(ToolGrid grid) : grid_(grid) {}

  /// The part in a rectangle that is at least as large as it needs, or as large as it is.
  [[nodiscard]] CutNode in(const CutNode& part, Length x, Length y, const Sides& room) const {
    CutNode placed = part;
    placed.x = x;
    placed.y = y;
    placed.width = room[0];
    placed.height = room[1];
    if (part.kind != Kind::Cut) return placed;
    const std::size_t way = along(part);
    Sides first = room;
    Sides second = room;
    first.at(way) = fits(part, room) ? settingOf(part, room) : part.at;
    second.at(way) = room.at(way) - first.at(way);
    if (first.at(way) == Length()) return in(part.parts[1], x, y, room);
    if (second.at(way) == Length()) return in(part.parts[0], x, y, room);
    placed.at = first.at(way);
    placed.parts = {in(part.parts[0], x, y, first), in(part.parts[1], way == 0 ? x + first[0] : x,
                                                       way == 0 ? y : y + first[1], second)};
    return placed;
  }

 private:
  [[nodiscard]] bool fits(const CutNode& part, const Sides& room) const {
    const Sides need = needOf(part, grid_);
    return need[0] <= room[0] && need[1] <= room[1];
  }

  /// The mark above where the cut was, if the rest finds room beyond it; else the last that leaves
  /// it room.
  [[nodiscard]] Length settingOf(const CutNode& cut, const Sides& room) const {
    const std::size_t way = along(cut);
    const Length first = needOf(cut.parts[0], grid_).at(way);
    const Length most = room.at(way) - needOf(cut.parts[1], grid_).at(way);
    const Length wanted = std::max(first, grid_.roundUp(cut.at));
    return wanted <= most ? wanted : std::max(first, grid_.roundDown(most));
  }

  ToolGrid grid_;
};

}  // namespace

CutNode ontoTrimmerGrid(const CutNode& sheet, ToolGrid grid) {
  return Placing(grid).in(sheet, sheet.x, sheet.y, sidesOf(sheet));
}

}  // namespace creasewright
