#include "cutting/column_generation.h"

#include <algorithm>
#include <cmath>
#include <random>

#include "cutting/cost_bound.h"

namespace creasewright {
namespace {

constexpr double kTiny = 1e-7;

/// Each blank alone on each sheet that holds it.
void addFirstColumns(PlanState& state) {
  for (std::size_t s = 0; s < state.stock.size(); ++s) {
    SheetKnapsack sheet = state.knapsack(s, state.rows.demand);
    for (std::size_t d = 0; d < state.demands.size(); ++d) {
      if (!state.fits(s, d)) continue;
      std::vector<double> value(state.demands.size(), 0);
      value[d] = 1;
      state.addColumn(s, sheet.best(value));
    }
  }
}

/// Worths as whole numbers, so that sums of them are exact and a bound by them holds to the letter.
std::vector<double> wholeWorths(const std::vector<double>& worths, double scale) {
  std::vector<double> whole;
  for (const double worth : worths) whole.push_back(std::floor(std::max(0.0, worth) * scale));
  return whole;
}

double demandedWorth(const CoverRows& rows, const std::vector<double>& worths) {
  double sum = 0;
  for (std::size_t d = 0; d < worths.size(); ++d) sum += worths[d] * std::max(rows.demand[d], 0);
  return sum;
}

/// The dearest sheet's cost becomes a thousand million.
double scaleOf(const PlanState& state) {
  std::int64_t dearest = 1;
  for (std::size_t s = 0; s < state.stock.size(); ++s) dearest = std::max(dearest, state.costOf(s));
  return 1e9 / static_cast<double>(dearest);
}

void raiseBound(PlanState& state, double bound) {
  if (std::isfinite(bound)) state.bound = std::max(state.bound, roundedUp(bound));
}

/// Column generation until no pattern is worth its sheet; `whole` keeps the bound.
LinearCover generate(PlanState& state, const CoverRows& rows, bool whole) {
  std::vector<SheetKnapsack> sheets;
  for (std::size_t s = 0; s < state.stock.size(); ++s)
    sheets.push_back(state.knapsack(s, rows.demand));
  const bool exact = std::ranges::all_of(sheets, &SheetKnapsack::exact);
  if (whole) state.exact = exact;
  const double scale = scaleOf(state);
  while (true) {
    LinearCover linear = solveLinear(state.columns, rows);
    const std::vector<double> worths = wholeWorths(linear.blankWorth, scale);
    std::vector<SheetValue> values;
    bool grown = false;
    for (std::size_t s = 0; s < state.stock.size(); ++s) {
      std::vector<double> worth = state.worthOn(s, worths);
      for (std::size_t d = 0; d < worth.size(); ++d)
        if (rows.demand[d] <= 0) worth[d] = 0;
      Pattern pattern = sheets[s].best(worth);
      const auto cost = static_cast<double>(state.costOf(s));
      values.push_back({state.costOf(s), rows.atHand[s], pattern.value / scale});
      if (pattern.value / scale + linear.sheetWorth[s] <= cost + kTiny) continue;
      grown = state.addColumn(s, std::move(pattern)) || grown;
    }
    if (whole && exact) raiseBound(state, costBound(demandedWorth(rows, worths) / scale, values));
    if (!grown || !state.mayGoOn()) return linear;
  }
}

/// The bound where the grid was too fine to price exactly: no pattern is worth more than the best
/// of blanks that are a little smaller.
void boundCoarsely(PlanState& state, const LinearCover& linear) {
  const double scale = scaleOf(state);
  const std::vector<double> worths = wholeWorths(linear.blankWorth, scale);
  std::vector<SheetValue> values;
  for (std::size_t s = 0; s < state.stock.size(); ++s) {
    const double most = mostWorth(state.widthOf(s), state.heightOf(s),
                                  state.items(s, state.rows.demand), state.worthOn(s, worths));
    if (!std::isfinite(most)) return;
    values.push_back({state.costOf(s), state.rows.atHand[s], most / scale});
  }
  raiseBound(state, costBound(demandedWorth(state.rows, worths) / scale, values));
}

/// How many of a column there are sheets for.
int usable(const PlanState& state, std::size_t i, int wanted, const CoverRows& rest) {
  const int atHand = rest.atHand[static_cast<std::size_t>(state.columns[i].stock)];
  return atHand < 0 ? wanted : std::min(wanted, atHand);
}

bool take(const PlanState& state, std::size_t i, int count, CoverRows& rest,
          std::vector<int>& times) {
  if (count <= 0) return false;
  times[i] += count;
  int& atHand = rest.atHand[static_cast<std::size_t>(state.columns[i].stock)];
  if (atHand >= 0) atHand -= count;
  for (std::size_t d = 0; d < rest.demand.size(); ++d)
    rest.demand[d] = std::max(0, rest.demand[d] - count * state.columns[i].pattern.counts[d]);
  return true;
}

/// New columns for shaken values of the blanks, always shaken alike; false when none is new.
bool diversify(PlanState& state, const LinearCover& linear, int round) {
  constexpr int kShakes = 100;
  std::minstd_rand random(static_cast<unsigned>(round));
  std::uniform_real_distribution<double> shake(1 - 0.06 * round, 1 + 0.06 * round);
  const std::size_t before = state.columns.size();
  for (std::size_t s = 0; s < state.stock.size(); ++s) {
    SheetKnapsack sheet = state.knapsack(s, state.rows.demand);
    for (int i = 0; i < kShakes && state.mayGoOn(); ++i) {
      std::vector<double> worth = linear.blankWorth;
      for (std::size_t d = 0; d < worth.size(); ++d)
        worth[d] = state.fits(s, d) ? std::max(worth[d], kTiny) * shake(random) : 0;
      state.addColumn(s, sheet.best(worth));
    }
  }
  return state.columns.size() > before;
}

}  // namespace

LinearCover coverByColumns(PlanState& state) {
  addFirstColumns(state);
  LinearCover linear = generate(state, state.rows, true);
  if (linear.covered && !state.exact) boundCoarsely(state, linear);
  return linear;
}

void roundWithResiduals(PlanState& state, LinearCover linear) {
  CoverRows rest = state.rows;
  std::vector<int> times;
  const auto left = [&] { return std::ranges::any_of(rest.demand, [](int d) { return d > 0; }); };
  while (true) {
    times.resize(state.columns.size(), 0);
    bool taken = false;
    for (std::size_t i = 0; i < linear.times.size(); ++i) {
      const int count =
          usable(state, i, static_cast<int>(std::floor(linear.times[i] + kTiny)), rest);
      taken = take(state, i, count, rest, times) || taken;
    }
    if (!left()) break;
    if (!taken) {
      const auto most = std::ranges::max_element(linear.times);
      const auto i = static_cast<std::size_t>(most - linear.times.begin());
      if (*most < kTiny || !take(state, i, usable(state, i, 1, rest), rest, times)) return;
    }
    if (!left()) break;
    linear = generate(state, rest, false);
    if (!linear.covered) return;
  }
  times.resize(state.columns.size(), 0);
  state.keep(times);
}

void improve(PlanState& state, const LinearCover& linear) {
  constexpr int kRounds = 12;
  for (int round = 0; round < kRounds; ++round) {
    if (state.proven() || !state.mayGoOn()) return;
    if (round > 0 && !diversify(state, linear, round)) continue;
    const double seconds =
        std::clamp((state.options.seconds - state.spent()) / 2, 0.2, state.options.seconds);
    const WholeCover found = solveWhole(state.columns, state.rows, seconds);
    if (found.found && (!state.best.found || found.cost < state.best.cost)) state.best = found;
  }
}

}  // namespace creasewright
