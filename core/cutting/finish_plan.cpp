#include "cutting/finish_plan.h"

#include <algorithm>

#include "cutting/cut_tree.h"
#include "cutting/finish_layouts.h"
#include "cutting/list_patterns.h"

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

/// A column cut `times` times, of each blank only so many.
void addLayout(PlanState& state, const CoverColumn& column, const SheetsAlike& alike,
               CuttingPlan& plan) {
  CutNode sheet = column.pattern.sheet;
  scale(sheet, state.unit);
  std::vector<int> left = alike.counts;
  limit(sheet, left);
  sheet = tidied(sheet);
  const CutSheet& stock = state.stock[static_cast<std::size_t>(column.stock)];
  plan.layouts.push_back(
      {column.stock, alike.sheets,
       leastWork(stock, state.demands, alike.counts, sheet, state.work).value_or(sheet)});
}

}  // namespace

void finish(PlanState& state, CuttingPlan& plan) {
  if (state.options.fewestLayouts) simplify(state);
  plan.cost = state.best.cost;
  plan.priced = state.priced;
  std::vector<int> rest = state.rows.demand;
  for (std::size_t i = 0; i < state.columns.size(); ++i) {
    if (state.best.times[i] <= 0) continue;
    const CoverColumn& column = state.columns[i];
    for (const SheetsAlike& alike :
         sheetsFor(column.pattern.counts, state.best.times[i], rest, state.options.noExtras))
      addLayout(state, column, alike, plan);
  }
  if (state.options.fewestLayouts)
    setLessOften(plan.layouts, state.stock, state.demands, state.options.seconds * Work::kSecond,
                 state.work);
  std::ranges::stable_sort(plan.layouts, std::ranges::greater(), &Layout::count);
  for (const Layout& layout : plan.layouts) plan.sheets += layout.count;
}

}  // namespace creasewright
