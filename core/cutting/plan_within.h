#pragma once

#include "cutting/plan_state.h"

namespace creasewright {

/// Worths of the blanks by their area, and what each kind of sheet holds of it.
WorthProof areaProof(const PlanState& state);

/// What so many sheets of each kind hold at most.
std::int64_t heldBy(const std::vector<int>& counts, const WorthProof& proof);

/// Parts of the work left: to search some patterns, to list more, and for a solver that looks for a
/// cover.
struct WithinEffort {
  double search = 0;
  double listing = 0;
  double cover = 0;
};

/// Whether there surely is no plan, and why: by worths that are known, or by steps.
struct NoPlanWithin {
  bool none = false;
  CountProof proof;
};

/// Looks for a plan that takes no more than so many sheets of each kind, and keeps it where it
/// costs less than the best. Only patterns that such a plan can use are looked at: no sheet of it
/// may hold less than it can by more than all its sheets together can hold beyond what is wanted,
/// by any proof.
NoPlanWithin noPlanWithin(PlanState& state, const std::vector<int>& counts,
                          const WithinEffort& effort);

}  // namespace creasewright
