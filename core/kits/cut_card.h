#pragma once

#include "cutting/plan_cutting.h"
#include "kits/kit_plan.h"

namespace creasewright {

/// What is at hand of each of ClassKit::stock; -1 = as many as wanted.
std::vector<int> atHandOf(const ClassKit& kit);

/// Plans the sheets of a card anew. `atHand` counts ClassKit::stock. On a sheet whose grain
/// counts or whose pattern has a direction, blanks are not turned against it. Problems:
/// NoSheetOfColour, GrainConflict and those of planCutting().
std::optional<Problem> cutCard(PlanOptions options, const std::vector<int>& atHand, CardPlan& card);

/// The same; where the sheets of its colours do not do, those without a colour help out.
std::optional<Problem> cutAnyhow(const PlanOptions& options, const std::vector<int>& atHand,
                                 CardPlan& card);

/// Puts an easy plan for `options.trimmer` in the place of a card's plan of fewest sheets, which is
/// told beside it; where the sheets at hand do for none, the plan stays.
void cutEasily(const PlanOptions& options, const std::vector<int>& atHand, CardPlan& card);

}  // namespace creasewright
