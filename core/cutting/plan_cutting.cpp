#include "cutting/plan_cutting.h"

#include <algorithm>

#include "cutting/check_plan.h"
#include "cutting/column_generation.h"
#include "cutting/finish_plan.h"
#include "cutting/list_patterns.h"
#include "cutting/plan_by_sets.h"
#include "cutting/prove_bound.h"
#include "cutting/sheet_counts.h"
#include "units/paper.h"

namespace creasewright {
namespace {

constexpr std::size_t kFewSizes = 10;
constexpr std::size_t kSomeSizes = 16;
constexpr std::int64_t kNear = 50;  // of many sizes a plan this part above the bound is near enough
constexpr double kPartSeconds = 0.3;
constexpr double kSearchShare = 0.7;  // of the work; the rest is for the proof and the finish
constexpr double kProofShare = 0.2;
constexpr unsigned kShakenRounds = 8;
constexpr double kShakenShare = 0.4;

Result<CuttingPlan> plan(const std::vector<CutSheet>& stock,
                         const std::vector<BlankDemand>& demands, const PlanOptions& options,
                         bool part);

/// Plans of a part of the blanks, with a part of the work left.
PlanPart partsOf(PlanState& state) {
  return [&state](const std::vector<BlankDemand>& demands) {
    PlanOptions options;
    options.seconds = std::min(kPartSeconds, state.work.left() / Work::kSecond / 4);
    options.fewestLayouts = false;
    options.goOn = [&state](const PlanProgress&) {
      return !state.options.goOn ||
             state.options.goOn({state.best.found ? state.best.cost : 0, state.bound});
    };
    Result<CuttingPlan> made = plan(state.stock, demands, options, true);
    if (made) state.work.add(made->work * Work::kSecond);
    return made;
  };
}

/// Residual rounds with shaken fractions, for their columns as well: a part of the work left.
void shake(PlanState& state, const LinearCover& linear) {
  const WorkShare share(state.work, kShakenShare * state.work.left());
  for (unsigned seed = 1; seed <= kShakenRounds && !state.proven() && state.mayGoOn(); ++seed)
    roundWithResiduals(state, linear, seed);
}

/// A plan from parts of the blanks: equal ones, then from the large blanks down, unless this is
/// itself the plan of a part, or is near the bound already.
void tryParts(PlanState& state, bool part) {
  if (part) return;
  if (!state.proven()) planBySets(state, partsOf(state));
  const std::int64_t near = state.demands.size() <= kSomeSizes ? 0 : state.bound / kNear;
  if (!state.best.found || state.best.cost > state.bound + near) planBySize(state, partsOf(state));
}

void search(PlanState& state, bool part) {
  const WorkShare share(state.work, kSearchShare * state.work.left());
  if (state.demands.size() <= kFewSizes && listAll(state)) {
    boundByCounts(state);
    if (!state.proven()) tryParts(state, part);
    return;
  }
  const LinearResult linear = coverByColumns(state);
  if (!linear.solved) return;
  state.impossible = !linear.cover.covered && linear.exact && linear.converged;
  if (!linear.cover.covered) return;
  roundWithResiduals(state, linear.cover);
  tryParts(state, part);
  shake(state, linear.cover);
  if (!state.proven()) boundByCounts(state);
  improve(state, linear.cover);
  if (!state.proven() && state.mayGoOn()) listNear(state, linear.cover);
}

Result<CuttingPlan> plan(const std::vector<CutSheet>& stock,
                         const std::vector<BlankDemand>& demands, const PlanOptions& options,
                         bool part) {
  PlanState state(stock, demands, options);
  planGreedily(state);
  search(state, part);
  if (!state.best.found)
    return Problem{state.impossible ? ProblemCode::StockTooFew : ProblemCode::PlanNotFound, {}, {}};
  CuttingPlan made;
  made.bound = state.bound;
  if (!part) {
    const WorkShare share(state.work, kProofShare * options.seconds * Work::kSecond);
    made.proof = {fewProofs(state), state.tooFew};
    made.bound =
        recomputeBound(stock, demands, state.priced, made.proof, state.best.cost, state.work);
  }
  finish(state, made);
  made.work = state.work.spent() / Work::kSecond;
  return made;
}

/// The name of the smallest sheet sold that holds a blank, turned or not; empty when there is none.
std::string_view smallestPaperFor(const BlankDemand& demand) {
  std::string_view name;
  double smallest = 0;
  const Length shorter = std::min(demand.width, demand.height);
  const Length longer = std::max(demand.width, demand.height);
  for (const Paper& paper : papers()) {
    const double size = paper.width.mm() * paper.height.mm();
    if (shorter > paper.width || longer > paper.height || (!name.empty() && size >= smallest))
      continue;
    name = paper.name;
    smallest = size;
  }
  return name;
}

}  // namespace

Result<CuttingPlan> planCutting(const std::vector<CutSheet>& stock,
                                const std::vector<BlankDemand>& demands,
                                const PlanOptions& options) {
  if (demands.empty() || stock.empty()) return Problem{ProblemCode::NoDemand, {}, {}};
  for (const BlankDemand& demand : demands) {
    const bool held =
        std::ranges::any_of(stock, [&](const CutSheet& sheet) { return holds(sheet, demand); });
    if (!held)
      return Problem{ProblemCode::BlankTooLarge,
                     demand.name,
                     {demand.width, demand.height, std::string(smallestPaperFor(demand))}};
  }
  Result<CuttingPlan> made = plan(stock, demands, options, false);
  if (!made) return made;
  // Whatever made it: no plan goes out that has not been judged.
  if (std::optional<Problem> fault = checkPlan(*made, stock, demands)) return *std::move(fault);
  return made;
}

}  // namespace creasewright
