#pragma once

#include <optional>
#include <vector>

#include "cutting/sheet_knapsack.h"

namespace creasewright {

/// How much work may go into listing patterns.
struct ListingLimits {
  std::size_t bytes = 19'200'000;      ///< of the vectors kept in all cells together
  std::size_t compared = 150'000'000;  ///< pairs of vectors
  std::size_t patterns = 3'000;        ///< for the whole sheet
};

/// Which patterns are wanted: with these worths of the items, a pattern may be worth at most
/// `slack` less than the best one.
struct WorthFloor {
  std::vector<double> worth;  ///< by item; empty = every pattern is wanted
  double slack = 0;
};

/// Every guillotine pattern of a sheet that no other one covers: the count vectors of each cell of
/// its grid come from its blanks and from those of the two parts of each cut, and what another
/// vector of the cell covers is dropped. Counts are never above `atMost`. Nothing when it would
/// take too much, when its `work` was given up, when there are more than 64 items or 127 of one on
/// a sheet, or when the grid had to be made coarser. With a `floor`, a vector that is worth more
/// than its slack less than the best of its cell is dropped as well: in its place the best one
/// would make any pattern better by that much.
std::optional<std::vector<Pattern>> allPatterns(std::int64_t width, std::int64_t height,
                                                const std::vector<KnapsackItem>& items,
                                                const ListingLimits& limits = {},
                                                const WorthFloor& floor = {}, Work* work = nullptr);

}  // namespace creasewright
