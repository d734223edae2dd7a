#pragma once

#include <optional>
#include <vector>

#include "drawing/drawing.h"
#include "kits/bag_labels.h"
#include "kits/plan_kit.h"
#include "units/paper.h"

namespace creasewright {

/// The plan on upright pages: what to buy, what goes into each bag, the teacher's day, then each
/// layout once with its numbered cuts, last the bags' labels. `oneMore` sheets for one more person,
/// when known.
std::vector<Drawing> kitPages(const ClassKit& kit, const KitPlan& plan, std::optional<int> oneMore,
                              Unit unit, const LabelSheet& labels);

}  // namespace creasewright
