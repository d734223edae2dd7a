#pragma once

#include <cstdint>
#include <vector>

#include "units/tool_grid.h"

namespace creasewright {

/// Readings that differ by no more are one, nm.
inline constexpr std::int64_t kSameReading = 1000;

/// A full score as it can be read from the two sides it is parallel to.
struct SideReadings {
  bool level = false;  ///< read from bottom or top, else from left or right
  Length fromLow;      ///< left or bottom
  Length fromHigh;     ///< right or top
};

/// For each score whether it is read from the high side: the best choice in the sense of
/// chooseSides(), over all choices.
std::vector<bool> chooseReadings(const std::vector<SideReadings>& scores, ToolGrid grid,
                                 Length board);

}  // namespace creasewright
