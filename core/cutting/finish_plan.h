#pragma once

#include "cutting/plan_state.h"

namespace creasewright {

/// The best cover as a plan: among covers of its cost one of few layouts where that is wanted, each
/// layout with little work at the trimmer; blanks nobody asked for become offcuts.
CuttingPlan finishedPlan(PlanState& state);

}  // namespace creasewright
