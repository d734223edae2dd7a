#include "cutting/finish_plan.h"

#include <algorithm>

#include "cutting/cut_tree.h"
#include "cutting/neat_layout.h"
#include "cutting/strip_layout.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

/// Among covers of the best one's cost one of fewer layouts.
void simplify(PlanState& state) {
  state.best.times.resize(state.columns.size(), 0);
  const auto used = std::ranges::count_if(state.best.times, [](int n) { return n > 0; });
  if (used < 2 || state.columns.size() > kMostColumnsToSimplify ||
      state.spent() > state.options.seconds / 2)
    return;
  const WholeCover found = fewestColumns(state.columns, state.rows, state.best.cost, 0.2);
  const auto fewer = std::ranges::count_if(found.times, [](int n) { return n > 0; });
  if (found.found && found.cost <= state.best.cost && fewer < used) state.best = found;
}

/// The layout or another one of the same blanks that is less work at the trimmer.
CutNode neater(const PlanState& state, int stock, CutNode sheet, const std::vector<int>& counts) {
  std::vector<BlankDemand> demands = state.demands;
  for (BlankDemand& demand : demands)
    demand.mayTurn = mayTurn(state.stock[static_cast<std::size_t>(stock)], demand);
  for (const auto& find : {stripLayout, neatLayout}) {
    std::optional<CutNode> other = find(sheet.width, sheet.height, demands, counts);
    if (other && trimmingWork(*other) < trimmingWork(sheet)) sheet = std::move(*other);
  }
  return sheet;
}

/// All sheets of a column are cut alike; of each blank only as many as are still needed, so that
/// fewer than a sheet's worth of each comes out over.
void addLayout(const PlanState& state, const CoverColumn& column, int times, std::vector<int>& rest,
               CuttingPlan& plan) {
  std::vector<int> most;
  for (std::size_t d = 0; d < rest.size(); ++d)
    most.push_back(std::min(column.pattern.counts[d], (std::max(rest[d], 0) + times - 1) / times));
  CutNode sheet = column.pattern.sheet;
  scale(sheet, state.unit);
  for (std::size_t d = 0; d < rest.size(); ++d) rest[d] -= most[d] * times;
  std::vector<int> left = most;
  limit(sheet, left);
  plan.layouts.push_back({column.stock, times, neater(state, column.stock, tidied(sheet), most)});
}

}  // namespace

CuttingPlan finishedPlan(PlanState& state) {
  if (state.options.fewestLayouts) simplify(state);
  CuttingPlan plan;
  plan.cost = state.best.cost;
  plan.priced = state.priced;
  plan.bound = state.bound;
  std::vector<int> rest = state.rows.demand;
  for (std::size_t i = 0; i < state.columns.size(); ++i) {
    if (state.best.times[i] <= 0) continue;
    addLayout(state, state.columns[i], state.best.times[i], rest, plan);
  }
  std::ranges::stable_sort(plan.layouts, std::ranges::greater(), &Layout::count);
  for (const Layout& layout : plan.layouts) plan.sheets += layout.count;
  return plan;
}

}  // namespace creasewright
