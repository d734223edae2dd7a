#pragma once

#include "kits/plan_kit.h"

namespace creasewright::testing {

/// Builds a class and plans it.
inline Result<KitPlan> planOf(ClassKit kit, const PlanOptions& options = {}) {
  Result<BuiltKit> built = buildKit(std::move(kit));
  if (!built) return built.problem();
  return planKit(std::move(built).value(), options);
}

}  // namespace creasewright::testing
