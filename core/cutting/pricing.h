#pragma once

#include <algorithm>

#include "cutting/cost_bound.h"
#include "cutting/plan_state.h"

namespace creasewright {

/// The best patterns of all sheets for some prices of the blanks, and what follows from them.
struct Priced {
  std::vector<Pattern> patterns;  ///< by kind of sheet
  WorthProof proof;
  CostBound bound;
};

/// The sheets of a plan, to be priced again and again.
class Pricing {
 public:
  /// `state` must outlive it.
  Pricing(PlanState& state, std::size_t mostWork);

  /// Whether what it finds are the best patterns of all.
  [[nodiscard]] bool exact() const {
    return sheets_.size() == state_.stock.size() &&
           std::ranges::all_of(sheets_, &SheetKnapsack::exact);
  }

  /// Worths are whole numbers, so that sums of them are exact and a bound by them holds to the
  /// letter. Nothing when the work was given up.
  std::optional<Priced> best(std::vector<double> prices, const CoverRows& rows);

 private:
  [[nodiscard]] double scaleFor(const std::vector<double>& prices) const;

  PlanState& state_;
  std::vector<SheetKnapsack> sheets_;
};

}  // namespace creasewright
