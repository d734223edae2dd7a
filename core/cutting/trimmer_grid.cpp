#include "cutting/trimmer_grid.h"

#include <algorithm>
#include <array>
#include <vector>

namespace creasewright {
namespace {

using Kind = CutNode::Kind;

/// Along the width and the height.
using Sides = std::array<Length, 2>;

std::size_t along(const CutNode& cut) { return cut.upright ? 0 : 1; }

/// What a part takes with all its blanks rounded up, and the same of its parts.
struct Need {
  Sides sides{};
  std::vector<Need> parts = {};

  [[nodiscard]] bool fits(const Sides& room) const {
    return sides[0] <= room[0] && sides[1] <= room[1];
  }
};

Need needOf(const CutNode& node, ToolGrid grid) {
  if (node.kind == Kind::Offcut) return {};
  if (node.kind == Kind::Blank) return {{grid.roundUp(node.width), grid.roundUp(node.height)}};
  Need need{{}, {needOf(node.parts[0], grid), needOf(node.parts[1], grid)}};
  const Sides& first = need.parts[0].sides;
  const Sides& second = need.parts[1].sides;
  const std::size_t way = along(node);
  need.sides.at(way) = first.at(way) + second.at(way);
  need.sides.at(1 - way) = std::max(first.at(1 - way), second.at(1 - way));
  return need;
}

/// The mark above where the cut was, if the rest finds room beyond it; else the last that leaves
/// it room.
Length settingOf(const CutNode& cut, const Need& need, const Sides& room, ToolGrid grid) {
  const std::size_t way = along(cut);
  const Length first = need.parts[0].sides.at(way);
  const Length most = room.at(way) - need.parts[1].sides.at(way);
  const Length wanted = std::max(first, grid.roundUp(cut.at));
  return wanted <= most ? wanted : std::max(first, grid.roundDown(most));
}

/// The part in a rectangle that is at least as large as it needs, or as large as it is.
CutNode placed(const CutNode& part, const Need& need, Length x, Length y, const Sides& room,
               ToolGrid grid) {
  CutNode out{part.kind,    x,       y, room[0], room[1], part.demand, part.turned,
              part.upright, part.at, {}};
  if (part.kind != Kind::Cut) return out;
  const std::size_t way = along(part);
  Sides first = room;
  Sides second = room;
  first.at(way) = need.fits(room) ? settingOf(part, need, room, grid) : part.at;
  second.at(way) = room.at(way) - first.at(way);
  if (first.at(way) == Length()) return placed(part.parts[1], need.parts[1], x, y, room, grid);
  if (second.at(way) == Length()) return placed(part.parts[0], need.parts[0], x, y, room, grid);
  out.at = first.at(way);
  out.parts = {placed(part.parts[0], need.parts[0], x, y, first, grid),
               placed(part.parts[1], need.parts[1], way == 0 ? x + first[0] : x,
                      way == 0 ? y : y + first[1], second, grid)};
  return out;
}

}  // namespace

CutNode ontoTrimmerGrid(const CutNode& sheet, ToolGrid grid) {
  return placed(sheet, needOf(sheet, grid), sheet.x, sheet.y, {sheet.width, sheet.height}, grid);
}

}  // namespace creasewright
