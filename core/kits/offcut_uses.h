#pragma once

#include <vector>

#include "kits/kit_plan.h"

namespace creasewright {

/// Offcuts no narrower than this are worth keeping, and are cut up for mats and labels.
inline constexpr Length kLeastOffcut = Length::nanometres(30'000'000);

/// Mats and labels, of designs that have none, whose blanks for all sets come out of the offcuts of
/// one card; each for itself, not all together. Where a design fits several cards, another one than
/// its own comes first.
std::vector<OffcutUse> offcutUses(const KitPlan& plan);

}  // namespace creasewright
