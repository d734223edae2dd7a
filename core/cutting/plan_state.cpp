#include "cutting/plan_state.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace creasewright {
namespace {

/// The greatest common divisor of all lengths keeps the numbers small.
std::int64_t commonUnit(const std::vector<CutSheet>& stock,
                        const std::vector<BlankDemand>& demands) {
  std::int64_t unit = 0;
  for (const CutSheet& s : stock) unit = std::gcd(unit, std::gcd(s.width.nm(), s.height.nm()));
  for (const BlankDemand& d : demands) unit = std::gcd(unit, std::gcd(d.width.nm(), d.height.nm()));
  return std::max<std::int64_t>(unit, 1);
}

/// What the blanks' area alone costs on the sheet that is cheapest by area.
std::int64_t areaBound(const PlanState& state) {
  double area = 0;
  for (const BlankDemand& d : state.demands) area += d.width.mm() * d.height.mm() * d.quantity;
  double cheapest = 0;
  for (std::size_t s = 0; s < state.stock.size(); ++s) {
    const double price = static_cast<double>(state.costOf(s)) /
                         (state.stock[s].width.mm() * state.stock[s].height.mm());
    if (s == 0 || price < cheapest) cheapest = price;
  }
  return roundedUp(area * cheapest);
}

}  // namespace

std::int64_t roundedUp(double cost) { return static_cast<std::int64_t>(std::ceil(cost - 1e-6)); }

PlanState::PlanState(const std::vector<CutSheet>& stockSheets,
                     const std::vector<BlankDemand>& blanks, const PlanOptions& planOptions)
    : stock(stockSheets),
      demands(blanks),
      options(planOptions),
      work(planOptions.seconds * Work::kSecond, [this] {
        return !options.goOn || options.goOn({best.found ? best.cost : 0, bound});
      }) {
  priced = std::ranges::all_of(stock, [](const CutSheet& s) { return s.cost > 0; });
  for (const CutSheet& s : stock) rows.atHand.push_back(s.atHand);
  for (const BlankDemand& d : demands) rows.demand.push_back(d.quantity);
  unit = commonUnit(stock, demands);
  bound = areaBound(*this);
}

std::vector<KnapsackItem> PlanState::items(std::size_t s, const std::vector<int>& demand) const {
  std::vector<KnapsackItem> all;
  for (std::size_t d = 0; d < demands.size(); ++d)
    all.push_back({demands[d].width.nm() / unit, demands[d].height.nm() / unit,
                   mayTurn(stock[s], demands[d]), std::max(demand[d], 0)});
  return all;
}

SheetKnapsack PlanState::knapsack(std::size_t s, const std::vector<int>& demand,
                                  std::size_t mostWork) {
  constexpr double kPair = 30;  // steps, with the coarser grids that were tried
  SheetKnapsack sheet(widthOf(s), heightOf(s), items(s, demand), mostWork);
  work.add(kPair * static_cast<double>(sheet.pairs()));
  return sheet;
}

void PlanState::keepProof(WorthProof proof, double cost) {
  constexpr std::size_t kMost = 40;
  if (proofs.empty() || cost > bestProof_) {
    bestProof_ = cost;
    proofs.insert(proofs.begin(), std::move(proof));
  } else if (cost > 0.99 * bestProof_) {
    proofs.insert(proofs.begin() + 1, std::move(proof));
  }
  if (proofs.size() > kMost) proofs.pop_back();
}

std::vector<double> PlanState::worthOn(std::size_t s, std::vector<double> worth) const {
  for (std::size_t d = 0; d < worth.size(); ++d)
    if (!fits(s, d)) worth[d] = 0;
  return worth;
}

bool PlanState::addColumn(std::size_t s, Pattern pattern) {
  const auto known = [&](const CoverColumn& column) {
    return column.stock == static_cast<int>(s) && column.pattern.counts == pattern.counts;
  };
  if (std::ranges::any_of(columns, known)) return false;
  columns.push_back({static_cast<int>(s), costOf(s), std::move(pattern)});
  if (best.found) best.times.resize(columns.size(), 0);
  return true;
}

void PlanState::keep(const std::vector<int>& times) {
  WholeCover found{true, 0, times};
  for (std::size_t i = 0; i < times.size(); ++i) found.cost += times[i] * columns[i].cost;
  if (!best.found || found.cost < best.cost) best = std::move(found);
}

bool PlanState::limited() const {
  return std::ranges::any_of(
      rows.atHand, [](int n) { return n >= 0; });
}

}  // namespace creasewright
