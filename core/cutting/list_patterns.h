#pragma once

#include "cutting/all_patterns.h"
#include "cutting/plan_state.h"

namespace creasewright {

/// All patterns there are, and a whole-number cover over them. True when a plan is then proven
/// best; else only a better plan may come of it, or nothing where there are too many.
bool listAll(PlanState& state, const ListingLimits& limits, const WorthFloor& floor = {});

/// A plan at the bound wastes no more than the bound is above the linear cover, so it is cut only
/// by patterns that waste no more: these are listed, first those that waste hardly anything.
void listNear(PlanState& state, const LinearCover& linear);

}  // namespace creasewright
