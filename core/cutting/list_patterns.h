#pragma once

#include "cutting/all_patterns.h"
#include "cutting/plan_state.h"

namespace creasewright {

/// Takes all patterns there are for columns, with the bound of the linear cover over them, and a
/// whole-number cover. False when they are too many, or the sheets at hand are too few.
bool listAll(PlanState& state);

/// A plan at the bound wastes no more than the bound is above the linear cover, so it is cut only
/// by patterns that waste no more: these are listed, first those that waste hardly anything, and a
/// whole-number cover over them looked for.
void listNear(PlanState& state, const LinearCover& linear);

/// Of very many columns keeps all that the plan uses and those that waste least: enough to look for
/// few layouts.
void keepUseful(PlanState& state);

}  // namespace creasewright
