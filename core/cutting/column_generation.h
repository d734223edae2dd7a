#pragma once

#include "cutting/plan_state.h"

namespace creasewright {

/// The linear cover by column generation until no pattern is worth its sheet, and the bound that
/// follows from it.
LinearCover coverByColumns(PlanState& state);

/// Takes the whole parts of the linear cover, then covers the rest anew, until nothing is left.
void roundWithResiduals(PlanState& state, LinearCover linear);

/// Whole-number covers over ever more columns, until one is proven.
void improve(PlanState& state, const LinearCover& linear);

}  // namespace creasewright
