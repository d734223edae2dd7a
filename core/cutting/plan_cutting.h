#pragma once

#include <functional>

#include "base/result.h"
#include "cutting/cutting.h"
#include "units/tool_grid.h"

namespace creasewright {

/// How far the planner is: the best plan so far and what no plan can beat.
struct PlanProgress {
  std::int64_t cost = 0;  ///< 0 = no plan yet
  std::int64_t bound = 0;
  bool operator==(const PlanProgress&) const = default;
};

struct PlanOptions {
  double seconds =
      5;  ///< of an ordinary machine: so much work at most (work.h), counted, not timed
  bool fewestLayouts = true;  ///< among plans of one cost look for one of few layouts
  bool noExtras = false;  ///< the last sheets of a layout are cut in part: no blank is left over
  ToolGrid trimmer = {};  ///< marks of the trimmer an easy plan is cut at; none = the class's own
  std::function<bool(const PlanProgress&)> goOn = {};  ///< false stops; empty = never
};

/// Cuts all blanks from stock by guillotine cuts, edge to edge: fewest sheets, or least cost when
/// every stock has a price, then fewest different layouts. Columns by Gilmore & Gomory (Oper. Res.
/// 9, 1961; 13, 1965) priced by SheetKnapsack, the bound by Farley (Oper. Res. 38, 1990) and over
/// the numbers of sheets of each kind (sheet_counts.h), whole numbers by rounding with residual
/// rounds and a whole-number cover over all columns. For up to ten sizes all patterns are listed
/// first; for more, when the bound is not met, those that a plan at the bound may use. The bound of
/// the plan is the one that prove_bound.h finds anew. The same request gives the same plan on every
/// machine; a `goOn` that says no is heard within a fifth of a second. Errors: BlankTooLarge (where
/// = blank, width, height), NoDemand, StockTooFew, PlanNotFound (stopped, or the work did not do),
/// PlanFaulty (a fault of ours: the plan is kept back).
Result<CuttingPlan> planCutting(const std::vector<CutSheet>& stock,
                                const std::vector<BlankDemand>& demands,
                                const PlanOptions& options = {});

}  // namespace creasewright
