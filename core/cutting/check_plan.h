#pragma once

#include <optional>

#include "base/problem.h"
#include "cutting/cutting.h"

namespace creasewright {

/// What is wrong with a plan, judged from its cut trees alone: every part of a cut fills its
/// rectangle, every blank has its size and lies as it may, nothing is short, no more sheets are
/// used than are at hand, the numbers of sheets and the cost add up, and the bound is not above the
/// cost. Shares nothing with the planner. Nothing when all is right; else PlanFaulty, whose `where`
/// is the blank, or the sheet by its number from 1 (empty for the plan as a whole) and whose value
/// says what: `size`, `turned`, `cut`, `short`, `at-hand`, `sheets`, `cost`, `bound`.
std::optional<Problem> checkPlan(const CuttingPlan& plan, const std::vector<CutSheet>& stock,
                                 const std::vector<BlankDemand>& demands);

}  // namespace creasewright
