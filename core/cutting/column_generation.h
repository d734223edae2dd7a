#pragma once

#include "cutting/plan_state.h"

namespace creasewright {

struct LinearResult {
  bool solved = false;
  LinearCover cover;
  bool exact = false;      ///< priced without rounding lengths
  bool converged = false;  ///< no pattern is worth more than its sheet
};

/// The linear cover by column generation until no pattern is worth its sheet, first over a coarse
/// grid where the exact one is large, and the bound that follows from it.
LinearResult coverByColumns(PlanState& state);

/// Takes the whole parts of the linear cover, then covers the rest anew, until nothing is left.
/// Seeds other than 0 shake which of the parts is rounded up.
void roundWithResiduals(PlanState& state, LinearCover linear, unsigned seed = 0);

/// Whole-number covers over ever more columns, until one is proven.
void improve(PlanState& state, const LinearCover& linear);

}  // namespace creasewright
