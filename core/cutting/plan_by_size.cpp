#include "cutting/plan_by_size.h"

#include <algorithm>
#include <numeric>

#include "cutting/fill_offcuts.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

constexpr double kLeap = 1.3;  // in area, from one blank to the next smaller one
constexpr std::size_t kMostLeaps = 3;

void inUnits(const PlanState& state, CutNode& node) {
  for (Length* length : {&node.x, &node.y, &node.width, &node.height, &node.at})
    *length = *length / state.unit;
  for (CutNode& part : node.parts) inUnits(state, part);
}

/// The demands of a part by their index among all.
void rename(CutNode& node, const std::vector<std::size_t>& demands) {
  if (node.demand >= 0)
    node.demand = static_cast<int>(demands[static_cast<std::size_t>(node.demand)]);
  for (CutNode& part : node.parts) rename(part, demands);
}

/// Plans the large demands, then cuts the others from the offcuts in several ways.
void fillAfter(PlanState& state, const std::vector<std::size_t>& large, const PlanPart& planPart) {
  std::vector<Layout> layouts;
  if (!large.empty()) {
    std::vector<BlankDemand> demands;
    for (const std::size_t d : large) demands.push_back(state.demands[d]);
    Result<CuttingPlan> plan = planPart(demands);
    if (!plan || plan->cost > (state.best.found ? state.best.cost : plan->cost)) return;
    layouts = std::move(std::move(plan).value().layouts);
  }
  std::vector<int> quantity = state.rows.demand;
  for (Layout& layout : layouts) rename(layout.sheet, large);
  for (const std::size_t d : large) quantity[d] = 0;
  for (const bool byArea : {false, true})
    for (const bool longestFirst : {false, true})
      if (const auto filled = fillOffcuts(layouts, state.stock, state.demands, quantity,
                                          {byArea, longestFirst}, &state.work))
        keepLayouts(state, *filled);
}

}  // namespace

void keepLayouts(PlanState& state, const std::vector<Layout>& layouts) {
  std::int64_t cost = 0;
  for (const Layout& layout : layouts)
    cost += layout.count * state.costOf(static_cast<std::size_t>(layout.stock));
  if (state.best.found && cost >= state.best.cost) return;
  std::vector<int> times(state.columns.size(), 0);
  for (const Layout& layout : layouts) {
    Pattern pattern{0, blanksOf(layout, state.demands.size()), layout.sheet};
    inUnits(state, pattern.sheet);
    const auto known = std::ranges::find_if(state.columns, [&](const CoverColumn& column) {
      return column.stock == layout.stock && column.pattern.counts == pattern.counts;
    });
    const auto i = static_cast<std::size_t>(known - state.columns.begin());
    if (known == state.columns.end())
      state.addColumn(static_cast<std::size_t>(layout.stock), std::move(pattern));
    times.resize(state.columns.size(), 0);
    times[i] += layout.count;
  }
  state.keep(times);
}

void planGreedily(PlanState& state) {
  if (const auto filled = fillOffcuts({}, state.stock, state.demands, state.rows.demand, {}))
    keepLayouts(state, *filled);
}

void planBySize(PlanState& state, const PlanPart& planPart) {
  std::vector<std::size_t> order(state.demands.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const auto area = [&](std::size_t d) {
    return state.demands[d].width.mm() * state.demands[d].height.mm();
  };
  std::ranges::stable_sort(order, std::ranges::greater(), area);
  std::vector<std::size_t> leaps;
  for (std::size_t k = 1; k < order.size(); ++k)
    if (area(order[k - 1]) > kLeap * area(order[k])) leaps.push_back(k);
  std::ranges::stable_sort(leaps, std::ranges::greater(),
                           [&](std::size_t k) { return area(order[k - 1]) / area(order[k]); });
  leaps.resize(std::min(leaps.size(), kMostLeaps));
  leaps.insert(leaps.begin(), 0);
  for (const std::size_t k : leaps) {
    if (state.proven() || (k > 0 && state.best.found && !state.mayGoOn())) return;
    fillAfter(state, {order.begin(), order.begin() + static_cast<std::ptrdiff_t>(k)}, planPart);
  }
}

}  // namespace creasewright
