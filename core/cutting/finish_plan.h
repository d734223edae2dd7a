#pragma once

#include "cutting/plan_state.h"

namespace creasewright {

/// The layouts of the best cover, their number and cost: among covers of its cost one of few
/// layouts where that is wanted, each layout with little work at the trimmer; blanks nobody asked
/// for become offcuts.
void finish(PlanState& state, CuttingPlan& plan);

}  // namespace creasewright
