#include "units/tool_grid.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <string>
#include <utility>

#include "base/excerpt.h"

namespace creasewright {
namespace {

constexpr std::array<std::pair<std::string_view, ToolGrid>, 4> kGrids{{
    {"1/8in", ToolGrid::eighthInch()},
    {"1/16in", ToolGrid::sixteenthInch()},
    {"1mm", ToolGrid::millimetre()},
    {"none", ToolGrid::none()},
}};

}  // namespace

bool ToolGrid::holds(Length length, Length tolerance) const {
  return std::abs((length - nearest(length)).nm()) <= tolerance.nm();
}

Length ToolGrid::roundUp(Length length) const { return -roundDown(-length); }

Length ToolGrid::roundDown(Length length) const {
  if (isNone()) return length;
  const std::int64_t step = step_.nm();
  const std::int64_t above = length.nm() % step;  // has the sign of the length
  return Length::nanometres(length.nm() - above - (above < 0 ? step : 0));
}

Length ToolGrid::nearest(Length length) const {
  const Length below = roundDown(length);
  return (length - below) * 2 < step_ ? below : roundUp(length);
}

Result<ToolGrid> parseToolGrid(std::string_view text) {
  std::string close(text);
  std::erase(close, ' ');
  const auto found = std::ranges::find(kGrids, std::string_view(close),
                                       &std::pair<std::string_view, ToolGrid>::first);
  if (found == kGrids.end()) return Problem{ProblemCode::GridUnknown, {}, {excerpt(text)}};
  return found->second;
}

std::string_view toolGridText(ToolGrid grid) {
  const auto found =
      std::ranges::find(kGrids, grid, &std::pair<std::string_view, ToolGrid>::second);
  return found == kGrids.end() ? std::string_view() : found->first;
}

}  // namespace creasewright
