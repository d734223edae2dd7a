#pragma once

#include <optional>

#include "cutting/cutting.h"
#include "cutting/work.h"

namespace creasewright {

/// How often a trimmer is set for one sheet, and how many cuts are made.
struct TrimEffort {
  int settings = 0;
  int cuts = 0;
  auto operator<=>(const TrimEffort&) const = default;
};
TrimEffort trimEffort(const CutNode& sheet);

/// The same blanks from the same sheet with fewer settings of the trimmer, or with as many and
/// fewer cuts, such that an offcut as large as the sheet's largest is left; nothing when there is
/// none, or the work did not do. `demands` say whether a blank may be turned on this
/// sheet, `turnOffcut` whether the offcut may.
///
/// The search is over all cut trees in which a strip is as wide as a sum of sides of what lies in
/// it, or as wide as the strip before it: a programme over what is left to cut (length, height,
/// blanks, the strip before), deepened setting by setting, so that the first tree that is found has
/// the fewest. Strips that are not alike but equally wide are cut with one setting.
std::optional<CutNode> fewerSettings(const CutNode& sheet, const std::vector<BlankDemand>& demands,
                                     bool turnOffcut, Work& work);

}  // namespace creasewright
