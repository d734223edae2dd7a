#include "kits/plan_kit.h"

#include <algorithm>

#include "cutting/trimmer_grid.h"
#include "kits/cut_card.h"
#include "kits/share_stock.h"

namespace creasewright {
namespace {

/// Shares out the work of a kit: so many cards may take all of theirs, more get less.
class Budget {
 public:
  Budget(const PlanOptions& options, std::size_t cards)
      : options_(options),
        cards_(static_cast<double>(cards)),
        left_(options.seconds * std::min(cards_, kFullCards)) {}

  /// For the next card: its share of what is left, doubled since most need less.
  PlanOptions next() {
    PlanOptions share = options_;
    share.seconds = std::min(options_.seconds, std::max(kLeastSeconds, 2 * left_ / cards_));
    share.fewestLayouts = options_.fewestLayouts && left_ > 0;
    cards_ -= 1;
    return share;
  }
  void spend(double seconds) { left_ = std::max(0.0, left_ - seconds); }

 private:
  static constexpr double kFullCards = 4;
  static constexpr double kLeastSeconds = 0.01;

  const PlanOptions& options_;
  double cards_;
  double left_;
};

/// A name without a set would get no bag and no part.
std::optional<Problem> namesProblem(const ClassKit& kit) {
  if (kit.names.size() <= static_cast<std::size_t>(kit.sets())) return std::nullopt;
  return Problem{ProblemCode::NamesTooMany,
                 {},
                 {static_cast<std::int64_t>(kit.names.size()), std::int64_t{kit.sets()}}};
}

/// Each card easily, from the sheets that the others leave.
void cutAllEasily(KitPlan& plan, PlanOptions options) {
  options.trimmer = plan.trimmer;
  for (CardPlan& card : plan.cards) {
    std::vector<int> atHand = atHandOf(plan.kit());
    for (const CardPlan& other : plan.cards)
      if (&other != &card) takeSheets(atHand, other.plan);
    cutEasily(options, atHand, card);
  }
}

/// Where sheets of one colour do not do for all cards of it, those without a colour help out.
Result<KitPlan> sharedAnyhow(KitPlan plan, const PlanOptions& options) {
  Result<KitPlan> shared = withStockShared(plan, options);
  const bool all = std::ranges::all_of(plan.cards, &CardPlan::anyColour);
  const bool coloured = std::ranges::any_of(
      plan.kit().stock, [](const StockSheet& sheet) { return sheet.colours != CardColours(); });
  if (shared || all || !coloured) return shared;
  const std::vector<int> atHand = atHandOf(plan.kit());
  for (CardPlan& card : plan.cards) {
    card.anyColour = true;
    if (const auto problem = cutCard(options, atHand, card)) return *problem;
  }
  return withStockShared(std::move(plan), options);
}

/// A trimmer that is read in inches has marks every 1/16 in.
std::vector<Layout> onInchMarks(std::vector<Layout> layouts) {
  for (Layout& layout : layouts)
    layout.sheet = ontoTrimmerGrid(layout.sheet, ToolGrid::sixteenthInch());
  return layouts;
}

}  // namespace

std::int64_t KitPlan::cost() const {
  std::int64_t sum = 0;
  for (const CardPlan& card : cards) sum += card.plan.cost;
  return sum;
}

bool KitPlan::isEasy() const {
  return std::ranges::any_of(
      cards, [](const CardPlan& card) { return card.fewest.has_value(); });
}

FewestSheets KitPlan::fewest() const {
  FewestSheets sum;
  for (const CardPlan& card : cards) {
    sum.sheets += card.fewest ? card.fewest->sheets : card.plan.sheets;
    sum.cost += card.fewest ? card.fewest->cost : card.plan.cost;
  }
  return sum;
}

bool KitPlan::fewestProven() const {
  return std::ranges::all_of(
      cards,
      [](const CardPlan& card) {
        return (card.fewest ? card.fewest->cost : card.plan.cost) == card.plan.bound;
      });
}

Result<KitPlan> planKit(BuiltKit kit, const PlanOptions& options) {
  if (const std::optional<Problem> problem = namesProblem(kit.kit)) return *problem;
  KitPlan plan;
  plan.built = std::make_shared<const BuiltKit>(std::move(kit));
  const std::vector<int> atHand = atHandOf(plan.kit());
  Budget budget(options, plan.built->cards.size());
  for (std::size_t c = 0; c < plan.built->cards.size(); ++c) {
    CardPlan& card = plan.cards.emplace_back(CardPlan{.built = plan.built, .index = c, .plan = {}});
    if (const auto problem = cutAnyhow(budget.next(), atHand, card)) return *problem;
    budget.spend(card.plan.work);
  }
  Result<KitPlan> shared = sharedAnyhow(plan, options);
  if (!shared) return shared;
  plan = std::move(shared).value();
  plan.trimmer = options.trimmer.isNone() ? trimmerOf(plan.kit()) : options.trimmer;
  if (plan.kit().goal == PlanGoal::Easy) cutAllEasily(plan, options);
  for (CardPlan& card : plan.cards) {
    card.inchLayouts = onInchMarks(card.plan.layouts);
    plan.sheets += card.plan.sheets;
    plan.proven = plan.proven && card.plan.proven();
  }
  return plan;
}

}  // namespace creasewright
