#include "cutting/plan_by_sets.h"

#include <algorithm>
#include <numeric>

namespace creasewright {
namespace {

constexpr int kMostSetTries = 3;

/// Whether the layouts take no more sheets than are at hand.
bool areAtHand(const PlanState& state, const std::vector<Layout>& layouts) {
  std::vector<std::int64_t> used(state.stock.size(), 0);
  for (const Layout& layout : layouts) used[static_cast<std::size_t>(layout.stock)] += layout.count;
  for (std::size_t s = 0; s < used.size(); ++s)
    if (state.stock[s].atHand >= 0 && used[s] > state.stock[s].atHand) return false;
  return true;
}

}  // namespace

void planBySets(PlanState& state, const PlanPart& planPart) {
  int all = 0;
  for (const int quantity : state.rows.demand) all = std::gcd(all, quantity);
  int tries = 0;
  for (int sets = all; sets > 1 && tries < kMostSetTries; --sets) {
    if (state.proven() || !state.mayGoOn()) return;
    if (all % sets != 0) continue;
    // Each part costs at least its share of the bound, in whole numbers.
    const std::int64_t least = (state.bound + sets - 1) / sets * sets;
    if (state.best.found && least >= state.best.cost) continue;
    ++tries;
    std::vector<BlankDemand> demands = state.demands;
    for (BlankDemand& demand : demands) demand.quantity /= sets;
    Result<CuttingPlan> plan = planPart(demands);
    if (!plan) continue;
    std::vector<Layout> layouts = std::move(plan).value().layouts;
    for (Layout& layout : layouts) layout.count *= sets;
    if (areAtHand(state, layouts)) keepLayouts(state, layouts);
  }
}

}  // namespace creasewright
