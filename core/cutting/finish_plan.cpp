#include "cutting/finish_plan.h"

#include <algorithm>

#include "cutting/cut_tree.h"
#include "cutting/list_patterns.h"
#include "cutting/neat_layout.h"
#include "cutting/strip_layout.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

constexpr double kSimplifySteps = 0.3 * Work::kSecond;

/// Among covers of the best one's cost one of fewer layouts.
void simplify(PlanState& state) {
  keepUseful(state);
  state.best.times.resize(state.columns.size(), 0);
  const auto used = std::ranges::count_if(state.best.times, [](int n) { return n > 0; });
  if (used < 2 || state.columns.size() > kMostColumnsToSimplify) return;
  const WholeCover found =
      fewestColumns(state.columns, state.rows, state.best.cost, state.work, kSimplifySteps);
  const auto fewer = std::ranges::count_if(found.times, [](int n) { return n > 0; });
  if (found.found && found.cost <= state.best.cost && fewer < used) state.best = found;
}

/// The layout or another one of the same blanks that is less work at the trimmer.
CutNode neater(PlanState& state, int stock, CutNode sheet, const std::vector<int>& counts) {
  std::vector<BlankDemand> demands = state.demands;
  for (BlankDemand& demand : demands)
    demand.mayTurn = mayTurn(state.stock[static_cast<std::size_t>(stock)], demand);
  const auto take = [&](std::optional<CutNode> other) {
    if (other && trimmingWork(*other) < trimmingWork(sheet)) sheet = *std::move(other);
  };
  if (!state.mayGoOn()) return sheet;
  take(stripLayout(sheet.width, sheet.height, demands, counts, state.work));
  take(neatLayout(sheet.width, sheet.height, demands, counts, state.work));
  return sheet;
}

/// A column cut `times` times, of each blank only so many.
void addLayout(PlanState& state, const CoverColumn& column, int times, const std::vector<int>& most,
               CuttingPlan& plan) {
  CutNode sheet = column.pattern.sheet;
  scale(sheet, state.unit);
  std::vector<int> left = most;
  limit(sheet, left);
  plan.layouts.push_back({column.stock, times, neater(state, column.stock, tidied(sheet), most)});
}

/// All sheets of a column are cut alike; of each blank only as many as are still needed, so that
/// fewer than a sheet's worth of each comes out over. Without extras the last sheets give only what
/// is still needed of each blank, and what lies beside it is left uncut.
void addLayouts(PlanState& state, const CoverColumn& column, int times, std::vector<int>& rest,
                CuttingPlan& plan) {
  std::vector<int> most;
  for (std::size_t d = 0; d < rest.size(); ++d)
    most.push_back(std::min(column.pattern.counts[d], (std::max(rest[d], 0) + times - 1) / times));
  if (!state.options.noExtras) {
    for (std::size_t d = 0; d < rest.size(); ++d) rest[d] -= most[d] * times;
    return addLayout(state, column, times, most, plan);
  }
  for (int sheets = 1; times > 0; times -= sheets) {
    std::vector<int> now;
    sheets = times;
    for (std::size_t d = 0; d < rest.size(); ++d) {
      now.push_back(std::min(most[d], std::max(rest[d], 0)));
      if (now[d] > 0) sheets = std::min(sheets, rest[d] / now[d]);
    }
    for (std::size_t d = 0; d < rest.size(); ++d) rest[d] -= now[d] * sheets;
    addLayout(state, column, sheets, now, plan);
  }
}

}  // namespace

void finish(PlanState& state, CuttingPlan& plan) {
  if (state.options.fewestLayouts) simplify(state);
  plan.cost = state.best.cost;
  plan.priced = state.priced;
  std::vector<int> rest = state.rows.demand;
  for (std::size_t i = 0; i < state.columns.size(); ++i) {
    if (state.best.times[i] <= 0) continue;
    addLayouts(state, state.columns[i], state.best.times[i], rest, plan);
  }
  std::ranges::stable_sort(plan.layouts, std::ranges::greater(), &Layout::count);
  for (const Layout& layout : plan.layouts) plan.sheets += layout.count;
}

}  // namespace creasewright
