#include "cutting/list_patterns.h"

#include <algorithm>
#include <numeric>

namespace creasewright {
namespace {

/// Of very many columns all that the plan uses and those that waste least: enough to look for few
/// layouts. A sheet of which only so many are at hand has a worth too, which is not waste.
void keepUseful(PlanState& state, const LinearCover& linear) {
  if (state.columns.size() <= kMostColumnsToSimplify) return;
  std::vector<std::size_t> order(state.columns.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const auto wasted = [&](std::size_t i) {
    if (state.best.times[i] > 0) return std::pair{false, 0.0};
    double worth = linear.sheetWorth[static_cast<std::size_t>(state.columns[i].stock)];
    for (std::size_t d = 0; d < linear.blankWorth.size(); ++d)
      worth += linear.blankWorth[d] * state.columns[i].pattern.counts[d];
    return std::pair{true, static_cast<double>(state.columns[i].cost) - worth};
  };
  std::ranges::stable_sort(order, {}, wasted);
  const auto used = std::ranges::count_if(state.best.times, [](int n) { return n > 0; });
  order.resize(std::max(kMostColumnsToSimplify, static_cast<std::size_t>(used)));
  std::vector<CoverColumn> columns;
  std::vector<int> times;
  for (const std::size_t i : order) {
    columns.push_back(std::move(state.columns[i]));
    times.push_back(state.best.times[i]);
  }
  state.columns = std::move(columns);
  state.best.times = std::move(times);
}

}  // namespace

bool listAll(PlanState& state, const ListingLimits& limits, const WorthFloor& floor) {
  std::vector<CoverColumn> all;
  for (std::size_t s = 0; s < state.stock.size(); ++s) {
    auto patterns = allPatterns(state.widthOf(s), state.heightOf(s),
                                state.items(s, state.rows.demand), limits, floor);
    if (!patterns) return false;
    for (Pattern& pattern : *patterns)
      all.push_back({static_cast<int>(s), state.costOf(s), std::move(pattern)});
  }
  const LinearCover linear = solveLinear(all, state.rows);
  if (!linear.covered) return false;
  if (floor.worth.empty()) state.bound = std::max(state.bound, roundedUp(linear.cost));
  const WholeCover found =
      solveWhole(all, state.rows, std::max(0.1, (state.options.seconds - state.spent()) * 0.8));
  if (floor.worth.empty() && found.found && found.best)
    state.bound = std::max(state.bound, found.cost);
  if (found.found && (!state.best.found || found.cost < state.best.cost)) {
    state.best = found;
    state.columns = std::move(all);
    keepUseful(state, linear);
  }
  return state.proven();
}

void listNear(PlanState& state, const LinearCover& linear) {
  if (state.limited()) return;
  const double slack = std::max(0.0, static_cast<double>(state.bound) - linear.cost);
  for (const double share : {0.03, 0.1, 0.3, 1.0}) {
    if (!state.mayGoOn()) return;
    if (listAll(state, {.vectors = 1'000'000, .compared = 600'000'000, .patterns = 20'000},
                {linear.blankWorth, slack * share}))
      return;
  }
}

}  // namespace creasewright
