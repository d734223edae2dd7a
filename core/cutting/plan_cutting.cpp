#include "cutting/plan_cutting.h"

#include <algorithm>

#include "cutting/check_plan.h"
#include "cutting/column_generation.h"
#include "cutting/finish_plan.h"
#include "cutting/list_patterns.h"
#include "cutting/plan_by_size.h"
#include "units/paper.h"

namespace creasewright {
namespace {

constexpr std::size_t kFewSizes = 10;
constexpr std::size_t kSomeSizes = 16;
constexpr std::int64_t kNear = 50;  // of many sizes a plan this part above the bound is near enough
constexpr double kPartSeconds = 0.3;

Result<CuttingPlan> plan(const std::vector<CutSheet>& stock,
                         const std::vector<BlankDemand>& demands, const PlanOptions& options,
                         bool part);

/// A plan from the large blanks down, unless this is itself the plan of a part, or is near the
/// bound already.
void trySizes(PlanState& state, bool part) {
  const std::int64_t near = state.demands.size() <= kSomeSizes ? 0 : state.bound / kNear;
  if (part || (state.best.found && state.best.cost <= state.bound + near)) return;
  const PlanOptions options{.seconds = std::min(kPartSeconds, state.options.seconds),
                            .fewestLayouts = false};
  planBySize(state, [&](const std::vector<BlankDemand>& demands) {
    return plan(state.stock, demands, options, true);
  });
}

Result<CuttingPlan> plan(const std::vector<CutSheet>& stock,
                         const std::vector<BlankDemand>& demands, const PlanOptions& options,
                         bool part) {
  PlanState state(stock, demands, options);
  if (demands.size() <= kFewSizes && listAll(state, {})) return finishedPlan(state);
  const LinearCover linear = coverByColumns(state);
  if (!linear.covered) return Problem{ProblemCode::StockTooFew, {}, {}};
  roundWithResiduals(state, linear);
  trySizes(state, part);
  improve(state, linear);
  if (!state.proven() && state.mayGoOn()) listNear(state, linear);
  if (!state.best.found) return Problem{ProblemCode::StockTooFew, {}, {}};
  return finishedPlan(state);
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
