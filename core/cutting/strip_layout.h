#pragma once

#include <optional>

#include "cutting/cutting.h"
#include "cutting/work.h"

namespace creasewright {

/// The blanks of `counts` (by demand) cut from a sheet in strips: each strip as wide as its first
/// blanks, filled up with others or not. Of the orders of blanks, ways to turn them and ways to cut
/// the strips that are tried, the one with the least work at the trimmer; nothing when none fits or
/// the work was given up.
std::optional<CutNode> stripLayout(Length width, Length height,
                                   const std::vector<BlankDemand>& demands,
                                   const std::vector<int>& counts, Work& work);

}  // namespace creasewright
