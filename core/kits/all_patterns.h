#pragma once

#include <optional>
#include <vector>

#include "kits/sheet_knapsack.h"

namespace creasewright {

/// How much work may go into listing patterns.
struct ListingLimits {
  std::size_t vectors = 200'000;       ///< kept in all cells together
  std::size_t compared = 150'000'000;  ///< pairs of vectors; half a second or so
  std::size_t patterns = 3'000;        ///< for the whole sheet
};

/// Every guillotine pattern of a sheet that no other one covers: the count vectors of each raster
/// cell come from its blanks and from those of the two parts of each cut, and what another vector
/// of the cell covers is dropped. Counts are never above `atMost`. Nothing when it would take too
/// much, when there are more than 16 items, or when the raster had to be made coarser.
std::optional<std::vector<Pattern>> allPatterns(std::int64_t width, std::int64_t height,
                                                const std::vector<KnapsackItem>& items,
                                                const ListingLimits& limits = {});

}  // namespace creasewright
