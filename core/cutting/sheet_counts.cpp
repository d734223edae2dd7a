#include "cutting/sheet_counts.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>

#include "cutting/plan_within.h"
#include "cutting/pricing.h"

namespace creasewright {
namespace {

constexpr double kTinyGain = 1e-7;
constexpr int kMostCountTrials = 400;

using Counts = std::vector<int>;

/// The cheapest numbers of sheets that nothing rules out.
class CheapestCounts {
 public:
  /// `open` are left out, but not what is above or below them.
  CheapestCounts(PlanState& state, const std::vector<WorthProof>& proofs,
                 const std::vector<Counts>& open)
      : state_(state), proofs_(proofs), open_(open), counts_(state.stock.size(), 0) {
    for (const WorthProof& proof : proofs)
      demanded_.push_back(worthOf(state.rows.demand, proof.worth));
    order_.resize(state.stock.size());
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    // The last is reckoned, not tried: best one that there is enough of.
    std::ranges::stable_sort(order_, {}, [&](std::size_t s) { return state.stock[s].atHand < 0; });
  }

  /// Numbers that cost less than `below`; empty when there are none. `complete` is false when the
  /// work was given up, so that nothing is known.
  Counts find(std::int64_t below) {
    const WorkShare share(state_.work, state_.work.left() / 4);
    least_ = below;
    const std::vector<std::int64_t> need = demanded_;
    descend(0, 0, need);
    return best_;
  }
  [[nodiscard]] bool complete() const { return complete_; }

 private:
  [[nodiscard]] std::int64_t mostOf(std::size_t s, std::int64_t cost) const {
    const std::int64_t most = (least_ - 1 - cost) / std::max<std::int64_t>(1, state_.costOf(s));
    return state_.stock[s].atHand < 0 ? most : std::min<std::int64_t>(most, state_.stock[s].atHand);
  }

  /// Whether the kinds from `k` on can be worth what is needed without costing too much.
  [[nodiscard]] bool hopeless(std::size_t k, std::int64_t cost,
                              const std::vector<std::int64_t>& need) const {
    for (std::size_t p = 0; p < need.size(); ++p) {
      if (need[p] <= 0) continue;
      double dearest = 0;  // worth by cost
      for (std::size_t i = k; i < order_.size(); ++i)
        dearest = std::max(dearest, static_cast<double>(proofs_[p].most[order_[i]]) /
                                        static_cast<double>(state_.costOf(order_[i])));
      if (dearest <= 0) return true;
      if (static_cast<double>(need[p]) / dearest > static_cast<double>(least_ - 1 - cost) + 1e-6)
        return true;
    }
    return false;
  }

  void descend(std::size_t k, std::int64_t cost, const std::vector<std::int64_t>& need) {
    complete_ = state_.work.add(20.0 * static_cast<double>(need.size())) && complete_;
    if (!complete_ || cost >= least_ || hopeless(k, cost, need)) return;
    const std::size_t s = order_[k];
    const std::int64_t most = mostOf(s, cost);
    std::int64_t first = 0;
    if (k + 1 == order_.size()) {
      for (std::size_t p = 0; p < need.size(); ++p) {
        if (need[p] <= 0) continue;
        const std::int64_t each = proofs_[p].most[s];
        if (each <= 0) return;
        first = std::max(first, (need[p] + each - 1) / each);
      }
      for (; first <= most; ++first) {
        counts_[s] = static_cast<int>(first);
        if (tooFew() || std::ranges::find(open_, counts_) != open_.end()) continue;
        least_ = cost + first * state_.costOf(s);
        best_ = counts_;
        break;
      }
      counts_[s] = 0;
      return;
    }
    for (std::int64_t n = first; n <= most; ++n) {
      counts_[s] = static_cast<int>(n);
      std::vector<std::int64_t> rest = need;
      for (std::size_t p = 0; p < need.size(); ++p) rest[p] -= n * proofs_[p].most[s];
      descend(k + 1, cost + n * state_.costOf(s), rest);
    }
    counts_[s] = 0;
  }

  [[nodiscard]] bool tooFew() const {
    return std::ranges::any_of(
        state_.tooFew,
        [&](const CountProof& few) {
          for (std::size_t s = 0; s < counts_.size(); ++s)
            if (counts_[s] > few.sheets[s]) return false;
          return true;
        });
  }

  PlanState& state_;
  const std::vector<WorthProof>& proofs_;
  const std::vector<Counts>& open_;
  std::vector<std::int64_t> demanded_;  // by proof
  std::vector<std::size_t> order_;      // of kinds
  std::int64_t least_ = 0;
  Counts counts_;
  Counts best_;
  bool complete_ = true;
};

/// What a sheet holds at most where all patterns are listed.
WorthProof proofOf(const PlanState& state, const std::vector<double>& prices) {
  constexpr double kScale = 1 << 26;
  double dearest = kTinyGain;
  for (const double price : prices) dearest = std::max(dearest, price);
  WorthProof proof;
  for (const double price : prices)
    proof.worth.push_back(
        static_cast<std::int64_t>(std::floor(std::max(0.0, price) / dearest * kScale)));
  proof.most.assign(state.stock.size(), 0);
  for (const CoverColumn& column : state.columns) {
    std::int64_t& most = proof.most[static_cast<std::size_t>(column.stock)];
    std::int64_t worth = 0;
    for (std::size_t d = 0; d < proof.worth.size(); ++d)
      worth += proof.worth[d] * std::min(column.pattern.counts[d], state.rows.demand[d]);
    most = std::max(most, worth);
  }
  return proof;
}

/// Whether numbers of sheets can, by a linear programme, give all blanks.
class Shortage {
 public:
  Shortage(PlanState& state, Counts counts)
      : state_(state), counts_(std::move(counts)), solver_(begin()) {}

  /// True: they can. False: they cannot, and a proof of it was added. Nothing when the work was
  /// given up.
  std::optional<bool> covered(Pricing* pricing) {
    while (true) {
      addColumns();
      if (!solver_.solve(state_.work)) return std::nullopt;
      if (solver_.cost() < 1e-6) return true;
      std::vector<double> prices = solver_.prices();
      const std::vector<double> sheetPrices(prices.begin() + blanks(), prices.end());
      prices.resize(state_.demands.size());
      if (state_.listed) return !rulesOut(proofOf(state_, prices));
      std::optional<Priced> priced = pricing->best(prices, state_.rows);
      if (!priced) return std::nullopt;
      if (rulesOut(priced->proof)) return false;
      bool grown = false;
      for (std::size_t s = 0; s < priced->patterns.size(); ++s) {
        double worth = sheetPrices[s];
        for (std::size_t d = 0; d < prices.size(); ++d)
          worth += prices[d] * priced->patterns[s].counts[d];
        if (worth > kTinyGain) grown = state_.addColumn(s, std::move(priced->patterns[s])) || grown;
      }
      if (!grown) return true;  // as far as arithmetic can tell
    }
  }

 private:
  [[nodiscard]] std::ptrdiff_t blanks() const { return std::ssize(state_.demands); }

  [[nodiscard]] Programme begin() const {
    Programme p;
    double all = 0;
    for (const BlankDemand& d : state_.demands) all += d.width.mm() * d.height.mm() * d.quantity;
    for (const BlankDemand& d : state_.demands) p.addRow(d.quantity, Programme::kInfinite);
    for (const int n : counts_) p.addRow(-Programme::kInfinite, n);
    for (std::size_t d = 0; d < state_.demands.size(); ++d) {
      p.put(static_cast<int>(d), 1);
      p.addColumn(1000 * state_.demands[d].width.mm() * state_.demands[d].height.mm() / all,
                  Programme::kInfinite);
    }
    return p;
  }

  void addColumns() {
    Programme more;
    for (; taken_ < state_.columns.size(); ++taken_) {
      const CoverColumn& column = state_.columns[taken_];
      for (std::size_t d = 0; d < state_.demands.size(); ++d)
        if (column.pattern.counts[d] > 0) more.put(static_cast<int>(d), column.pattern.counts[d]);
      more.put(static_cast<int>(state_.demands.size()) + column.stock, 1);
      more.addColumn(0, Programme::kInfinite);
    }
    if (more.columns() > 0) solver_.addColumns(more);
  }

  bool rulesOut(WorthProof proof) {
    if (worthOf(state_.rows.demand, proof.worth) <= heldBy(counts_, proof)) return false;
    state_.proofs.push_back(std::move(proof));
    return true;
  }

  PlanState& state_;
  Counts counts_;
  LinearSolver solver_;
  std::size_t taken_ = 0;
};

/// What is wanted of what so many sheets hold at most; above 1 they cannot do.
double shareOf(const PlanState& state, const Counts& counts, const WorthProof& proof) {
  return static_cast<double>(worthOf(state.rows.demand, proof.worth)) /
         std::max(1.0, static_cast<double>(heldBy(counts, proof)));
}

/// The proof by which so many sheets have least to spare; none where there are no proofs.
const WorthProof* tightest(const PlanState& state, const Counts& counts) {
  const WorthProof* best = nullptr;
  for (const WorthProof& proof : state.proofs)
    if (best == nullptr || shareOf(state, counts, proof) > shareOf(state, counts, *best))
      best = &proof;
  return best;
}

/// Tries numbers of sheets in turn, the cheapest first.
class CountTrials {
 public:
  CountTrials(PlanState& state, std::optional<Pricing>& pricing, const WithinEffort& effort)
      : state_(state), pricing_(pricing), effort_(effort) {}

  void run(int mostTries) {
    for (int tries = 0; tries < mostTries && state_.mayGoOn(); ++tries)
      if (!next()) return;
  }

 private:
  /// False at the end.
  bool next() {
    CheapestCounts cheapest(state_, state_.proofs, open_);
    const Counts counts = cheapest.find(state_.best.cost);
    if (!cheapest.complete()) return false;
    if (counts.empty()) {
      if (open_.empty()) state_.bound = state_.best.cost;
      return false;
    }
    std::int64_t cost = 0;
    for (std::size_t s = 0; s < counts.size(); ++s) cost += counts[s] * state_.costOf(s);
    if (open_.empty()) state_.bound = std::max(state_.bound, cost);
    const std::optional<bool> covered =
        Shortage(state_, counts).covered(pricing_ ? &*pricing_ : nullptr);
    if (!covered) return false;
    if (!*covered) return true;
    NoPlanWithin within = noPlanWithin(state_, counts, effort_);
    if (state_.best.cost <= cost) return false;
    if (within.none)
      state_.tooFew.push_back(std::move(within.proof));
    else
      open_.push_back(counts);
    return true;
  }

  PlanState& state_;
  std::optional<Pricing>& pricing_;
  WithinEffort effort_;
  std::vector<Counts> open_;  // neither a plan was found for them nor a proof that there is none
};

}  // namespace

std::int64_t worthOf(const std::vector<int>& counts, const std::vector<std::int64_t>& worth) {
  std::int64_t sum = 0;
  for (std::size_t d = 0; d < worth.size(); ++d) sum += worth[d] * counts[d];
  return sum;
}

std::vector<WorthProof> fewProofs(PlanState& state) {
  const std::vector<Counts> none;
  std::vector<WorthProof> few;
  if (!state.proofs.empty()) few.push_back(state.proofs.front());
  while (few.size() < state.proofs.size()) {
    CheapestCounts cheapest(state, few, none);
    const Counts counts = cheapest.find(state.bound);
    if (counts.empty()) break;
    const WorthProof* best = tightest(state, counts);
    if (shareOf(state, counts, *best) <= 1) break;
    few.push_back(*best);
  }
  // What is ruled out without steps may still be found anew from the few patterns that these leave.
  for (const CountProof& proof : state.tooFew)
    if (const WorthProof* best = tightest(state, proof.sheets); best && proof.steps.empty())
      few.push_back(*best);
  return few;
}

void boundByWorths(PlanState& state, const std::vector<double>& prices) {
  WorthProof proof = proofOf(state, prices);
  std::vector<SheetValue> values;
  for (std::size_t s = 0; s < state.stock.size(); ++s)
    values.push_back({state.costOf(s), state.stock[s].atHand, static_cast<double>(proof.most[s])});
  const double cost =
      costBound(static_cast<double>(worthOf(state.rows.demand, proof.worth)), values).cost;
  if (!std::isfinite(cost)) return;
  state.bound = std::max(state.bound, roundedUp(cost));
  state.keepProof(std::move(proof), cost);
}

void boundByCounts(PlanState& state) {
  constexpr WithinEffort kLittle{0.08, 0.02, 0};
  constexpr int kFewTries = 8;
  constexpr double kShareOfFew = 0.5;
  constexpr std::array<WithinEffort, 2> kMore{{{0.13, 0.03, 0.7}, {0.2, 0.5, 0.5}}};
  if (state.proofs.empty() || !state.best.found) return;
  std::optional<Pricing> pricing;
  if (!state.listed) {
    pricing.emplace(state, SheetKnapsack::kMostPricing);
    if (!pricing->exact()) return;
  }
  CountTrials(state, pricing, kLittle).run(kFewTries);
  // Of one kind there are few numbers to try: columns that are not known yet do as much for them.
  const bool few = state.stock.size() == 1 && !state.listed;
  const WorkShare share(state.work, (few ? kShareOfFew : 1) * state.work.left());
  for (const WithinEffort& effort : kMore)
    if (state.mayGoOn() && !state.proven())
      CountTrials(state, pricing, effort).run(kMostCountTrials);
}

}  // namespace creasewright
