#pragma once

#include <vector>

#include "drawing/drawing.h"
#include "kits/kit_plan.h"
#include "units/paper.h"

namespace creasewright {

/// The plan on upright pages: what to buy, what goes into each bag, the teacher's day, then each
/// layout once with its numbered cuts, last the bags' labels. What is not yet found out is left
/// out.
std::vector<Drawing> kitPages(const KitPlan& plan, Unit unit, const Paper& paper);

}  // namespace creasewright
