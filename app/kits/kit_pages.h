#pragma once

#include <optional>
#include <vector>

#include "drawing/drawing.h"
#include "kits/bag_labels.h"
#include "kits/offcut_uses.h"
#include "units/paper.h"

namespace creasewright {

/// What is found out about a plan besides.
struct KitFindings {
  std::optional<OneMore> oneMore = {};  ///< what one more person takes, when known
  std::vector<OffcutUse> offcuts = {};  ///< what they could give
};
KitFindings findingsFor(const ClassKit& kit, const KitPlan& plan);

/// The plan on upright pages: what to buy, what goes into each bag, the teacher's day, then each
/// layout once with its numbered cuts, last the bags' labels.
std::vector<Drawing> kitPages(const ClassKit& kit, const KitPlan& plan, const KitFindings& findings,
                              Unit unit, const Paper& paper);

}  // namespace creasewright
