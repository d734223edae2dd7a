#include "cutting/plan_within.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "cutting/all_patterns.h"
#include "cutting/branch_proof.h"
#include "cutting/sheet_counts.h"

namespace creasewright {
namespace {

using Counts = std::vector<int>;

constexpr std::size_t kMostSteps = 6'000;
constexpr std::size_t kFewSteps = 300;  // where it would prove nothing
constexpr ListingLimits kNearLimits{
    .bytes = 40'000'000, .compared = 400'000'000, .patterns = 8'000};

/// A proof, and how much less than it can the sheets may hold by it, all together.
struct Spare {
  WorthProof proof;
  std::int64_t slack = 0;
  double share = 0;  ///< what is wanted of what the sheets hold
};

/// By every proof, the tightest first.
std::vector<Spare> sparesOf(const PlanState& state, const Counts& counts) {
  std::vector<Spare> spares;
  const auto add = [&](const WorthProof& proof) {
    const std::int64_t held = heldBy(counts, proof);
    if (held <= 0) return;
    const std::int64_t wanted = worthOf(state.rows.demand, proof.worth);
    spares.push_back(
        {proof, held - wanted, static_cast<double>(wanted) / static_cast<double>(held)});
  };
  add(areaProof(state));
  for (const WorthProof& proof : state.proofs) add(proof);
  // By their area first where nothing is left over: no other worths tell more patterns apart then.
  std::ranges::stable_sort(spares, std::ranges::greater(),
                           [](const Spare& spare) { return std::min(spare.share, 1 - 1e-9); });
  return spares;
}

/// The first of the spares by which a plan may not use a pattern; beyond the last when it may.
std::size_t forbiddenBy(const PlanState& state, const std::vector<Spare>& spares,
                        const CoverColumn& column) {
  const auto wastesTooMuch = [&](const Spare& spare) {
    std::int64_t wasted = spare.proof.most[static_cast<std::size_t>(column.stock)];
    for (std::size_t d = 0; d < spare.proof.worth.size(); ++d)
      wasted -= spare.proof.worth[d] * std::min(column.pattern.counts[d], state.rows.demand[d]);
    return wasted > spare.slack;
  };
  return static_cast<std::size_t>(std::ranges::find_if(spares, wastesTooMuch) - spares.begin());
}

/// Looks for a plan of so many sheets.
class Within {
 public:
  Within(PlanState& state, const Counts& counts)
      : state_(state), counts_(counts), rows_(state.rows), spares_(sparesOf(state, counts)) {
    rows_.atHand = counts;
    for (const BlankDemand& d : state.demands) areas_.push_back(d.width.mm() * d.height.mm());
    needed_.resize(spares_.size(), false);
  }

  NoPlanWithin run(const WithinEffort& effort) {
    NoPlanWithin done;
    done.proof.sheets = counts_;
    if (spares_.empty()) return done;
    done.none = std::ranges::any_of(spares_, [](const Spare& spare) { return spare.slack < 0; });
    if (done.none) return done;
    few_ = usable();
    if (search(done, state_.listed, effort)) return done;
    for (const double part : kParts) {
      if (state_.listed || !list(part, effort)) break;
      if (search(done, part == kParts.back(), effort)) return done;
    }
    if (effort.cover <= 0) return done;
    const bool none = cover(effort.cover * state_.work.left());
    done.none = none && (state_.listed || listed_ == kParts.back());
    return done;
  }

 private:
  static constexpr std::array<double, 3> kParts{0.1, 0.3, 1.0};  // of what may be wasted

  /// Those of the columns that are known.
  std::vector<CoverColumn> usable() {
    std::vector<CoverColumn> few;
    for (const CoverColumn& column : state_.columns)
      if (counts_[static_cast<std::size_t>(column.stock)] > 0 && mayUse(column))
        few.push_back(column);
    return few;
  }

  bool mayUse(const CoverColumn& column) {
    const std::size_t by = forbiddenBy(state_, spares_, column);
    if (by == spares_.size()) return true;
    needed_[by] = true;
    return false;
  }

  /// All patterns there are; with a part of the tightest slack those that are wasted least, beside
  /// those that are known. False when that would take too much.
  bool list(double part, const WithinEffort& effort) {
    const WorkShare share(state_.work, effort.listing * state_.work.left());
    const WorthProof& tight = spares_.front().proof;
    const WorthFloor floor{{tight.worth.begin(), tight.worth.end()},
                           part * static_cast<double>(spares_.front().slack)};
    std::vector<CoverColumn> few;
    if (part < kParts.back()) few = usable();
    std::set<std::pair<int, std::vector<int>>> known;
    for (const CoverColumn& column : few) known.emplace(column.stock, column.pattern.counts);
    for (std::size_t s = 0; s < counts_.size(); ++s) {
      if (counts_[s] == 0) continue;
      auto patterns =
          allPatterns(state_.widthOf(s), state_.heightOf(s), state_.items(s, state_.rows.demand),
                      kNearLimits, floor, &state_.work);
      if (!patterns) return false;
      for (Pattern& pattern : *patterns) {
        CoverColumn column{static_cast<int>(s), state_.costOf(s), std::move(pattern)};
        if (mayUse(column) && !known.contains({column.stock, column.pattern.counts}))
          few.push_back(std::move(column));
      }
    }
    few_ = std::move(few);
    listed_ = part;
    return true;
  }

  /// Whether the end is known: a plan was found, or, where these are all patterns, there is none.
  bool search(NoPlanWithin& done, bool all, const WithinEffort& effort) {
    const WorkShare share(state_.work, effort.search * state_.work.left());
    const Branched branched =
        branchOnColumns(few_, rows_, areas_, all ? kMostSteps : kFewSteps, state_.work);
    if (branched.proof && all) {
      done.none = true;
      done.proof.steps = *branched.proof;
      for (std::size_t i = 0; i < spares_.size(); ++i)
        if (needed_[i] || i == 0) done.proof.spare.push_back(spares_[i].proof);
    }
    if (branched.proof) return all;
    return keep(branched.times) || keep(diveOnColumns(few_, rows_, areas_, state_.work));
  }

  /// The same by a solver that does not prove what it says; whether it says that there is none. Any
  /// cover will do.
  bool cover(double steps) {
    std::vector<CoverColumn> free = few_;
    for (CoverColumn& column : free) column.cost = 0;
    const WholeCover found = solveWhole(free, rows_, state_.work, steps);
    if (found.found) keep(found.times);
    return found.none;
  }

  bool keep(const std::vector<int>& chosen) {
    if (chosen.empty() || !covers(few_, rows_, chosen)) return false;
    std::vector<int> times(state_.columns.size(), 0);
    for (std::size_t i = 0; i < few_.size(); ++i) {
      if (chosen[i] <= 0) continue;
      state_.columns.push_back(few_[i]);
      times.push_back(chosen[i]);
    }
    if (state_.best.found) state_.best.times.resize(state_.columns.size(), 0);
    state_.keep(times);
    return true;
  }

  PlanState& state_;
  const Counts& counts_;
  CoverRows rows_;
  std::vector<double> areas_;
  std::vector<Spare> spares_;
  std::vector<bool> needed_;  ///< spares that leave something out
  std::vector<CoverColumn> few_;
  double listed_ = 0;  ///< with this part
};

}  // namespace

WorthProof areaProof(const PlanState& state) {
  constexpr double kUnit = 1e-3;  // mm2
  WorthProof proof;
  for (const BlankDemand& d : state.demands)
    proof.worth.push_back(
        static_cast<std::int64_t>(std::floor(d.width.mm() * d.height.mm() / kUnit * (1 - 1e-12))));
  for (const CutSheet& s : state.stock)
    proof.most.push_back(
        static_cast<std::int64_t>(std::ceil(s.width.mm() * s.height.mm() / kUnit * (1 + 1e-12))));
  return proof;
}

std::int64_t heldBy(const Counts& counts, const WorthProof& proof) {
  std::int64_t held = 0;
  for (std::size_t s = 0; s < counts.size(); ++s) held += counts[s] * proof.most[s];
  return held;
}

NoPlanWithin noPlanWithin(PlanState& state, const Counts& counts, const WithinEffort& effort) {
  return Within(state, counts).run(effort);
}

}  // namespace creasewright
