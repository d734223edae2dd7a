#include "cutting/plan_within.h"

#include <algorithm>
#include <cmath>

#include "cutting/all_patterns.h"
#include "cutting/sheet_counts.h"

namespace creasewright {
namespace {

using Counts = std::vector<int>;

constexpr double kLeastCover = 0.1 * Work::kSecond;
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

/// Whether a plan with so little to spare may use a pattern.
bool mayUse(const PlanState& state, const std::vector<Spare>& spares, const CoverColumn& column) {
  return std::ranges::all_of(
      spares,
      [&](const Spare& spare) {
        std::int64_t wasted = spare.proof.most[static_cast<std::size_t>(column.stock)];
        for (std::size_t d = 0; d < spare.proof.worth.size(); ++d)
          wasted -= spare.proof.worth[d] * std::min(column.pattern.counts[d], state.rows.demand[d]);
        return wasted <= spare.slack;
      });
}

/// Those of the columns that are known.
std::vector<CoverColumn> usable(const PlanState& state, const Counts& counts,
                                const std::vector<Spare>& spares) {
  std::vector<CoverColumn> few;
  for (const CoverColumn& column : state.columns)
    if (counts[static_cast<std::size_t>(column.stock)] > 0 && mayUse(state, spares, column))
      few.push_back(column);
  return few;
}

/// All there are; with a part of the tightest slack those that are wasted least. Nothing when that
/// would take too much.
std::optional<std::vector<CoverColumn>> listUsable(PlanState& state, const Counts& counts,
                                                   const std::vector<Spare>& spares, double part) {
  const WorkShare share(state.work, 0.3 * state.work.left());
  const WorthProof& tight = spares.front().proof;
  const WorthFloor floor{{tight.worth.begin(), tight.worth.end()},
                         part * static_cast<double>(spares.front().slack)};
  std::vector<CoverColumn> few;
  for (std::size_t s = 0; s < counts.size(); ++s) {
    if (counts[s] == 0) continue;
    auto patterns = allPatterns(state.widthOf(s), state.heightOf(s),
                                state.items(s, state.rows.demand), kNearLimits, floor, &state.work);
    if (!patterns) return std::nullopt;
    for (Pattern& pattern : *patterns) {
      CoverColumn column{static_cast<int>(s), state.costOf(s), std::move(pattern)};
      if (mayUse(state, spares, column)) few.push_back(std::move(column));
    }
  }
  return few;
}

/// Covers by some columns; the solver's word when they have no cover.
bool noCover(PlanState& state, const Counts& counts, const std::vector<CoverColumn>& few,
             double part) {
  if (few.empty()) return true;
  CoverRows rows = state.rows;
  rows.atHand = counts;
  const WholeCover found =
      solveWhole(few, rows, state.work, std::max(part * state.work.left(), kLeastCover));
  if (!found.found || (state.best.found && found.cost >= state.best.cost)) return found.none;
  std::vector<int> times(state.columns.size(), 0);
  for (std::size_t i = 0; i < few.size(); ++i) {
    if (found.times[i] <= 0) continue;
    state.columns.push_back(few[i]);
    times.push_back(found.times[i]);
  }
  state.best.times.resize(state.columns.size(), 0);
  state.keep(times);
  return false;
}

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

bool noPlanWithin(PlanState& state, const Counts& counts) {
  const std::vector<Spare> spares = sparesOf(state, counts);
  if (spares.empty()) return false;
  if (std::ranges::any_of(spares, [](const Spare& spare) { return spare.slack < 0; })) return true;
  const std::int64_t before = state.best.found ? state.best.cost : 0;
  const bool none = noCover(state, counts, usable(state, counts, spares), 0.15);
  if (state.listed) return none;
  for (const double part : {0.1, 1.0}) {
    if (!state.mayGoOn() || (state.best.found && state.best.cost != before)) return false;
    const auto few = listUsable(state, counts, spares, part);
    if (!few) return false;
    if (noCover(state, counts, *few, 0.3) && part == 1.0) return true;
  }
  return false;
}

}  // namespace creasewright
