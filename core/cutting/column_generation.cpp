#include "cutting/column_generation.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

#include "cutting/cut_tree.h"
#include "cutting/fill_offcuts.h"
#include "cutting/plan_by_size.h"
#include "cutting/pricing.h"

namespace creasewright {
namespace {

constexpr double kTiny = 1e-7;
constexpr std::size_t kRestPricing = 40'000'000;  // sums, a hundred times in a round

/// Each blank alone on each sheet that holds it.
void addFirstColumns(PlanState& state) {
  for (std::size_t s = 0; s < state.stock.size() && state.mayGoOn(); ++s) {
    SheetKnapsack sheet = state.knapsack(s, state.rows.demand, SheetKnapsack::kQuickPricing);
    for (std::size_t d = 0; d < state.demands.size(); ++d) {
      if (!state.fits(s, d)) continue;
      std::vector<double> value(state.demands.size(), 0);
      value[d] = 1;
      if (std::optional<Pattern> pattern = sheet.best(value, state.work))
        state.addColumn(s, *std::move(pattern));
    }
  }
}

double patternWorth(const Pattern& pattern, const std::vector<double>& worths) {
  double sum = 0;
  for (std::size_t d = 0; d < worths.size(); ++d) sum += pattern.counts[d] * worths[d];
  return sum;
}

void raiseBound(PlanState& state, const Priced& priced) {
  if (!std::isfinite(priced.bound.cost)) return;
  state.bound = std::max(state.bound, roundedUp(priced.bound.cost));
  state.keepProof(priced.proof, priced.bound.cost);
}

/// Column generation until no pattern is worth its sheet. Prices are smoothed: mostly those that
/// gave the best bound, a little those of the programme, and more of them when what was found is
/// not worth its sheet by them (Wentges, Int. Trans. Oper. Res. 4, 1997).
class Generation {
 public:
  /// `whole`: for all blanks, so that bounds hold.
  Generation(PlanState& state, const CoverRows& rows, Pricing& pricing, bool whole)
      : state_(state),
        rows_(rows),
        master_(rows),
        pricing_(pricing),
        whole_(whole && pricing.exact()) {}

  /// The linear cover as far as it came; nothing when not even the first was solved.
  std::optional<LinearCover> run() {
    std::optional<LinearCover> linear;
    do {
      std::optional<LinearCover> next = master_.solve(state_.columns, state_.work);
      if (!next) return linear;
      linear = std::move(next);
      if (whole_ && linear->covered && roundedUp(linear->cost) <= state_.bound) {
        converged_ = true;
        return linear;
      }
    } while (grow(*linear));
    return linear;
  }

  /// The prices from which the best bound would follow, were pricing exact.
  [[nodiscard]] const std::vector<double>& centre() const { return centre_; }
  /// Whether run() came to its end.
  [[nodiscard]] bool converged() const { return converged_; }

 private:
  bool grow(const LinearCover& linear) {
    constexpr double kSmooth = 0.8;
    constexpr double kLess = 0.2;
    for (double weight = centre_.empty() ? 0 : kSmooth;; weight = std::max(0.0, weight - kLess)) {
      std::vector<double> prices = linear.blankWorth;
      for (std::size_t d = 0; weight > 0 && d < prices.size(); ++d)
        prices[d] = weight * centre_[d] + (1 - weight) * prices[d];
      std::optional<Priced> priced = pricing_.best(prices, rows_);
      if (!priced) return false;
      if (whole_) raiseBound(state_, *priced);
      moveCentre(*priced);
      if (take(*priced, linear)) return true;
      if (weight <= kTiny) {
        converged_ = true;
        return false;
      }
    }
  }

  void moveCentre(const Priced& priced) {
    if (!std::isfinite(priced.bound.cost) || priced.bound.cost <= best_) return;
    best_ = priced.bound.cost;
    centre_.clear();
    for (const std::int64_t worth : priced.proof.worth)
      centre_.push_back(static_cast<double>(worth) * priced.bound.share);
  }

  bool take(Priced& priced, const LinearCover& linear) {
    bool grown = false;
    for (std::size_t s = 0; s < priced.patterns.size(); ++s) {
      const double worth =
          patternWorth(priced.patterns[s], linear.blankWorth) + linear.sheetWorth[s];
      const auto cost = static_cast<double>(state_.costOf(s));
      if (worth > cost + kTiny * std::max(1.0, cost))
        grown = state_.addColumn(s, std::move(priced.patterns[s])) || grown;
    }
    return grown;
  }

  PlanState& state_;
  const CoverRows& rows_;
  CoverMaster master_;
  Pricing& pricing_;
  bool whole_;
  bool converged_ = false;
  double best_ = 0;
  std::vector<double> centre_;  // the prices that gave the best bound
};

/// The bound where the grid was too fine to price exactly: no pattern is worth more than the best
/// of blanks that are a little smaller.
void boundCoarsely(PlanState& state, const std::vector<double>& prices) {
  constexpr double kScale = 1e6;
  Priced priced;
  std::vector<double> worths;
  double demanded = 0;
  for (std::size_t d = 0; d < prices.size(); ++d) {
    worths.push_back(std::floor(std::max(0.0, prices[d]) * kScale));
    priced.proof.worth.push_back(static_cast<std::int64_t>(worths.back()));
    demanded += worths.back() * state.rows.demand[d];
  }
  std::vector<SheetValue> values;
  for (std::size_t s = 0; s < state.stock.size(); ++s) {
    const double most =
        mostWorth(state.widthOf(s), state.heightOf(s), state.items(s, state.rows.demand),
                  state.worthOn(s, worths), state.work);
    if (!std::isfinite(most)) return;
    priced.proof.most.push_back(static_cast<std::int64_t>(most));
    values.push_back({state.costOf(s), state.rows.atHand[s], std::floor(most)});
  }
  priced.bound = costBound(demanded, values);
  raiseBound(state, priced);
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

/// Fractions between low and high that are the same on every system.
class Shake {
 public:
  explicit Shake(unsigned seed) : random_(seed) {}
  double between(double low, double high) {
    constexpr double kRange = std::minstd_rand::max() - std::minstd_rand::min();
    return low + (high - low) * static_cast<double>(random_() - std::minstd_rand::min()) / kRange;
  }

 private:
  std::minstd_rand random_;
};

/// New columns for shaken values of the blanks; false when none is new.
bool diversify(PlanState& state, const LinearCover& linear, int round) {
  constexpr int kShakes = 100;
  const WorkShare share(state.work, state.work.left() / 4);
  Shake shake(static_cast<unsigned>(round));
  const std::size_t before = state.columns.size();
  for (std::size_t s = 0; s < state.stock.size() && state.mayGoOn(); ++s) {
    SheetKnapsack sheet = state.knapsack(s, state.rows.demand, SheetKnapsack::kQuickPricing);
    for (int i = 0; i < kShakes && state.mayGoOn(); ++i) {
      std::vector<double> worth = linear.blankWorth;
      for (std::size_t d = 0; d < worth.size(); ++d)
        worth[d] = state.fits(s, d) ? std::max(worth[d], kTiny) *
                                          shake.between(1 - 0.06 * round, 1 + 0.06 * round)
                                    : 0;
      const double scale = sheet.mostScale(worth);
      for (double& w : worth) w = std::floor(w * scale);
      if (std::optional<Pattern> pattern = sheet.best(worth, state.work))
        state.addColumn(s, *std::move(pattern));
    }
  }
  return state.columns.size() > before;
}

/// What the columns taken so far do not give, cut from their offcuts and new sheets.
void fillUp(PlanState& state, const std::vector<int>& times, const CoverRows& rest) {
  std::vector<Layout> layouts;
  for (std::size_t i = 0; i < times.size(); ++i) {
    if (times[i] <= 0) continue;
    layouts.push_back({state.columns[i].stock, times[i], state.columns[i].pattern.sheet});
    scale(layouts.back().sheet, state.unit);
  }
  for (const bool byArea : {false, true})
    if (const auto filled =
            fillOffcuts(layouts, state.stock, state.demands, rest.demand, {byArea, false}))
      keepLayouts(state, *filled);
}

/// The columns that a plan better than the best may use: none wastes more, by the prices of the
/// linear cover, than such a plan may cost more than that.
std::vector<std::size_t> usefulColumns(const PlanState& state, const LinearCover& linear) {
  const double most =
      state.best.found ? static_cast<double>(state.best.cost - 1) - linear.cost + kTiny : 1e30;
  std::vector<std::size_t> useful;
  for (std::size_t i = 0; i < state.columns.size(); ++i) {
    const CoverColumn& column = state.columns[i];
    const double worth = patternWorth(column.pattern, linear.blankWorth) +
                         linear.sheetWorth[static_cast<std::size_t>(column.stock)];
    if (static_cast<double>(column.cost) - worth <= most) useful.push_back(i);
  }
  return useful;
}

/// Takes the whole parts of the linear cover, of each column `back` sheets less, and covers the
/// rest in whole numbers.
void coverRest(PlanState& state, const LinearCover& linear, int back, double steps) {
  CoverRows rest = state.rows;
  std::vector<int> times(state.columns.size(), 0);
  for (std::size_t i = 0; i < linear.times.size(); ++i) {
    const int whole = static_cast<int>(std::floor(linear.times[i] + kTiny)) - back;
    take(state, i, usable(state, i, whole, rest), rest, times);
  }
  const std::vector<std::size_t> useful = usefulColumns(state, linear);
  std::vector<CoverColumn> columns;
  for (const std::size_t i : useful) columns.push_back(state.columns[i]);
  const WholeCover found = solveWhole(columns, rest, state.work, steps);
  if (!found.found) return;
  for (std::size_t i = 0; i < useful.size(); ++i) times[useful[i]] += found.times[i];
  state.keep(times);
}

/// Ever larger rests, the last of them all there is.
void coverRests(PlanState& state, const LinearCover& linear) {
  constexpr double kShare = 0.25;
  for (const int back : {0, 1, 2, 4, std::numeric_limits<int>::max() / 2}) {
    if (state.proven() || !state.mayGoOn()) return;
    coverRest(state, linear, back, kShare * state.work.left());
  }
}

}  // namespace

LinearResult coverByColumns(PlanState& state) {
  addFirstColumns(state);
  LinearResult result;
  std::optional<LinearCover> linear;
  std::vector<double> centre;
  for (const std::size_t mostWork : {SheetKnapsack::kQuickPricing, SheetKnapsack::kMostPricing}) {
    const WorkShare share(state.work, state.work.left() / 2);
    Pricing pricing(state, mostWork);
    Generation generation(state, state.rows, pricing, true);
    if (std::optional<LinearCover> found = generation.run()) linear = std::move(found);
    result.exact = pricing.exact();
    result.converged = generation.converged();
    if (!generation.centre().empty()) centre = generation.centre();
    if (result.exact || !linear) break;
  }
  if (linear) result.cover = *std::move(linear);
  result.solved = !result.cover.times.empty();
  if (result.solved && result.cover.covered && !result.exact && !centre.empty())
    boundCoarsely(state, centre);
  return result;
}

void roundWithResiduals(PlanState& state, LinearCover linear, unsigned seed) {
  const WorkShare share(state.work, state.work.left() / 3);
  Pricing pricing(state, seed == 0 ? kRestPricing : SheetKnapsack::kQuickPricing);
  Shake shake(seed);
  CoverRows rest = state.rows;
  std::vector<int> times;
  const auto left = [&] { return std::ranges::any_of(rest.demand, [](int d) { return d > 0; }); };
  while (left()) {
    times.resize(state.columns.size(), 0);
    bool taken = false;
    std::size_t most = 0;
    double largest = 0;
    for (std::size_t i = 0; i < linear.times.size(); ++i) {
      const double whole = std::floor(linear.times[i] + kTiny);
      taken = take(state, i, usable(state, i, static_cast<int>(whole), rest), rest, times) || taken;
      const double part = (linear.times[i] - whole) * (seed == 0 ? 1 : shake.between(0.6, 1.4));
      if (part > largest) {
        largest = part;
        most = i;
      }
    }
    if (!left()) break;
    if (!taken &&
        (largest < kTiny || !take(state, most, usable(state, most, 1, rest), rest, times)))
      return fillUp(state, times, rest);
    if (!left()) break;
    std::optional<LinearCover> next = Generation(state, rest, pricing, false).run();
    if (!next || !next->covered || !state.mayGoOn()) return fillUp(state, times, rest);
    linear = *std::move(next);
  }
  times.resize(state.columns.size(), 0);
  state.keep(times);
}

void improve(PlanState& state, const LinearCover& linear) {
  constexpr int kRounds = 12;
  for (int round = 0; round < kRounds; ++round) {
    if (state.proven() || !state.mayGoOn()) return;
    if (round > 0 && !diversify(state, linear, round)) continue;
    coverRests(state, linear);
  }
}

}  // namespace creasewright
