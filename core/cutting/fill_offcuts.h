#pragma once

#include <optional>

#include "cutting/cutting.h"
#include "cutting/work.h"

namespace creasewright {

/// Into which offcut a blank goes, and how the rest of it is parted.
struct FillRule {
  bool byArea = false;  ///< the offcut that is smallest, else the one that leaves the least side
  bool longestFirst = false;  ///< blanks by their longer side, else by their area
};

/// Blanks beyond those that `layouts` give, cut from their offcuts, the largest first, and from new
/// sheets of the stock that costs least by area where there is no room; layouts are parted where
/// only some of their sheets take a blank. `quantity` (by demand) is what is still to be cut.
/// Nothing when the stock at hand does not suffice, or its `work` was given up.
std::optional<std::vector<Layout>> fillOffcuts(std::vector<Layout> layouts,
                                               const std::vector<CutSheet>& stock,
                                               const std::vector<BlankDemand>& demands,
                                               std::vector<int> quantity, const FillRule& rule,
                                               Work* work = nullptr);

}  // namespace creasewright
