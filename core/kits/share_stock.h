#pragma once

#include "cutting/plan_cutting.h"
#include "kits/kit_plan.h"

namespace creasewright {

/// Where the cards of a plan draw on the same sheets and those at hand do not do for all, they are
/// shared out: of one kind of sheet as costs least over all shares, of several kinds one card after
/// the other in the best order. Bounds stay those of the cards alone. Problems: StockTooFew and the
/// others of planCutting(); PlanFaulty where still more is cut than is at hand.
Result<KitPlan> withStockShared(KitPlan plan, const PlanOptions& options);

/// Takes the sheets of a plan away from what is at hand (-1 = any number).
void takeSheets(std::vector<int>& atHand, const CuttingPlan& plan);

}  // namespace creasewright
