#pragma once

#include <functional>

#include "cutting/plan_state.h"

namespace creasewright {

/// Plans some of the demands alone.
using PlanPart = std::function<Result<CuttingPlan>(const std::vector<BlankDemand>&)>;

/// Layouts as columns, and their plan where it is the best so far.
void keepLayouts(PlanState& state, const std::vector<Layout>& layouts);

/// Cuts all blanks in turn, each from the offcut that fits it best: a plan in no time.
void planGreedily(PlanState& state);

/// Plans the large blanks alone and cuts the small ones from what is left over, with nothing, or
/// the blanks before a leap in size, taken for large.
void planBySize(PlanState& state, const PlanPart& planPart);

}  // namespace creasewright
