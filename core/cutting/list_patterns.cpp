#include "cutting/list_patterns.h"

#include <algorithm>
#include <numeric>
#include <utility>

#include "cutting/sheet_counts.h"

namespace creasewright {
namespace {

/// The patterns of all sheets, or none when some are too many.
std::vector<CoverColumn> listed(PlanState& state, const ListingLimits& limits,
                                const WorthFloor& floor) {
  std::vector<CoverColumn> all;
  for (std::size_t s = 0; s < state.stock.size(); ++s) {
    auto patterns = allPatterns(state.widthOf(s), state.heightOf(s),
                                state.items(s, state.rows.demand), limits, floor, &state.work);
    if (!patterns) return {};
    for (Pattern& pattern : *patterns)
      all.push_back({static_cast<int>(s), state.costOf(s), std::move(pattern)});
  }
  return all;
}

void cover(PlanState& state, std::vector<CoverColumn> all, double steps) {
  const WholeCover found = solveWhole(all, state.rows, state.work, steps);
  if (!found.found || (state.best.found && found.cost >= state.best.cost)) return;
  state.best = found;
  state.columns = std::move(all);
}

}  // namespace

void keepUseful(PlanState& state) {
  if (state.columns.size() <= kMostColumnsToSimplify || state.proofs.empty()) return;
  state.best.times.resize(state.columns.size(), 0);
  std::vector<std::size_t> order(state.columns.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const WorthProof& proof = state.proofs.front();
  const auto wasted = [&](std::size_t i) {
    const CoverColumn& column = state.columns[i];
    if (state.best.times[i] > 0) return std::pair{false, std::int64_t{0}};
    return std::pair{true, proof.most[static_cast<std::size_t>(column.stock)] -
                               worthOf(column.pattern.counts, proof.worth)};
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

bool listAll(PlanState& state) {
  std::vector<CoverColumn> all;
  {
    const WorkShare share(state.work, state.work.left() / 4);
    all = listed(state, {}, {});
  }
  if (all.empty()) return false;
  CoverMaster master(state.rows);
  const std::optional<LinearCover> linear = master.solve(all, state.work);
  if (!linear || !linear->covered) return false;
  const std::vector<int> times = state.best.times;
  const std::vector<CoverColumn> before = std::exchange(state.columns, std::move(all));
  state.listed = true;
  // The plan so far goes on as columns beside them.
  state.best.times.assign(state.columns.size(), 0);
  for (std::size_t i = 0; i < times.size(); ++i) {
    if (times[i] <= 0) continue;
    state.columns.push_back(before[i]);
    state.best.times.push_back(times[i]);
  }
  boundByWorths(state, linear->blankWorth);
  const WholeCover found =
      solveWhole(state.columns, state.rows, state.work, 0.4 * state.work.left());
  if (found.found && (!state.best.found || found.cost < state.best.cost)) state.best = found;
  state.impossible = found.none;
  return true;
}

void listNear(PlanState& state, const LinearCover& linear) {
  if (state.limited()) return;
  const double slack = std::max(0.0, static_cast<double>(state.bound) - linear.cost);
  for (const double share : {0.03, 0.1, 0.3, 1.0}) {
    if (!state.mayGoOn() || state.proven()) return;
    std::vector<CoverColumn> all =
        listed(state, {.bytes = 40'000'000, .compared = 600'000'000, .patterns = 20'000},
               {linear.blankWorth, slack * share});
    if (all.empty()) return;
    cover(state, std::move(all), state.work.left() / 2);
  }
}

}  // namespace creasewright
