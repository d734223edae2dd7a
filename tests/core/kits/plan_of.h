#pragma once

#include "kits/cut_sheet.h"
#include "kits/plan_kit.h"

namespace creasewright::testing {

/// Builds a class and plans it.
inline Result<KitPlan> planOf(ClassKit kit, const PlanOptions& options = {}) {
  Result<BuiltKit> built = buildKit(std::move(kit));
  if (!built) return built.problem();
  return planKit(std::move(built).value(), options);
}

/// A kit's sheets as a planner knows them.
inline std::vector<CutSheet> cutStock(const ClassKit& kit) {
  std::vector<CutSheet> stock;
  for (const StockSheet& sheet : kit.stock) stock.push_back(cutSheet(sheet));
  return stock;
}

}  // namespace creasewright::testing
