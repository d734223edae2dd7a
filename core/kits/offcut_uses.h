#pragma once

#include <string>
#include <vector>

#include "extras/extra.h"
#include "kits/plan_kit.h"

namespace creasewright {

/// Something that all sets could have from what is left over.
struct OffcutUse {
  int card = 0;    ///< of KitPlan::cards: whose offcuts
  int item = 0;    ///< of ClassKit::items: what it goes onto
  Extra extra;     ///< mats or a label, of the offcuts' card
  int blanks = 0;  ///< in all
};

/// Offcuts no narrower than this are worth keeping, and are cut up for mats and labels.
inline constexpr Length kLeastOffcut = Length::nanometres(30'000'000);

/// Mats and labels, of designs that have none, whose blanks for all sets come out of the offcuts of
/// one card; each for itself, not all together. Where a design fits several cards, another one than
/// its own comes first.
std::vector<OffcutUse> offcutUses(const ClassKit& kit, const KitPlan& plan);

}  // namespace creasewright
