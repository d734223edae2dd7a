#pragma once

#include "cutting/plan_by_size.h"

namespace creasewright {

/// Where every number of blanks is a multiple of one number, as of the people of a class: plans the
/// blanks of one of so many equal parts and cuts that plan so many times.
void planBySets(PlanState& state, const PlanPart& planPart);

}  // namespace creasewright
