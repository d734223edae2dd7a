#pragma once

#include "cutting/plan_cutting.h"
#include "kits/kit_plan.h"

namespace creasewright {

/// Plans the sheets of each card for all sets, from the stock of that card or of any. On a sheet
/// whose grain counts or whose pattern has a direction, blanks are not turned against it. Sheets
/// of which only so many are at hand are shared out among the cards that may use them. All cards
/// together take at most about four times the work of `options.seconds`. Errors: NamesTooMany,
/// NoSheetOfColour, GrainConflict, and those of planCutting().
Result<KitPlan> planKit(BuiltKit kit, const PlanOptions& options = {});

/// Plans one more set, anew and as a set of its own beside the plan at hand, and takes the better:
/// never more than one set costs alone. Nothing when it cannot be planned.
std::optional<OneMore> oneMoreFor(const KitPlan& plan);

/// The plan with what else is found out about it: what one more takes, what the offcuts could give.
KitPlan withFindings(KitPlan plan);

/// The plan for other programs: per card its layouts (`count`, `stock`, `pieces` with x, y, w, h,
/// turned and design, `cuts` as a tree), `bound`, `proven`, supplies, and, where it was looked for,
/// what one more takes. Lengths in mm.
std::string kitJson(const KitPlan& plan);

}  // namespace creasewright
