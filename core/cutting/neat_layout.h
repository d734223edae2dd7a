#pragma once

#include <optional>

#include "cutting/cutting.h"
#include "cutting/work.h"

namespace creasewright {

/// The blanks of `counts` (by demand) cut from a sheet with little work at the trimmer: every set
/// of blanks keeps a few good rectangles it fits into, and each comes from two smaller sets side by
/// side or one above the other. Nothing when no way is found, the sets are too many
/// to try or the work was given up.
std::optional<CutNode> neatLayout(Length width, Length height,
                                  const std::vector<BlankDemand>& demands,
                                  const std::vector<int>& counts, Work& work);

}  // namespace creasewright
