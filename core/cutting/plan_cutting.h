#pragma once

#include <functional>

#include "base/result.h"
#include "cutting/cutting.h"

namespace creasewright {

/// How far the planner is: the best plan so far and what no plan can beat.
struct PlanProgress {
  std::int64_t cost = 0;  ///< 0 = no plan yet
  std::int64_t bound = 0;
  bool operator==(const PlanProgress&) const = default;
};

struct PlanOptions {
  double seconds = 5;         ///< about so long at most; the best plan so far comes back
  bool fewestLayouts = true;  ///< among plans of one cost look for one of few layouts
  std::function<bool(const PlanProgress&)> goOn = {};  ///< false stops; empty = never
};

/// Cuts all blanks from stock by guillotine cuts, edge to edge: fewest sheets, or least cost when
/// every stock has a price, then fewest different layouts. Columns by Gilmore & Gomory (Oper. Res.
/// 9, 1961; 13, 1965) priced by SheetKnapsack, the bound by Farley (Oper. Res. 38, 1990), whole
/// numbers by rounding with residual rounds and a whole-number cover over all columns. For up to
/// ten sizes all patterns are listed first, and the cover over them is proven best; for more, when
/// the bound is not met, those patterns that a plan at the bound may use. Errors: BlankTooLarge
/// (where = blank, width, height), NoDemand, StockTooFew, PlanFaulty (a fault of ours: the plan is
/// kept back).
Result<CuttingPlan> planCutting(const std::vector<CutSheet>& stock,
                                const std::vector<BlankDemand>& demands,
                                const PlanOptions& options = {});

}  // namespace creasewright
