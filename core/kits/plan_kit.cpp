#include "kits/plan_kit.h"

#include <algorithm>

#include "kits/cut_sheet.h"

namespace creasewright {
namespace {

/// The sheets a card may be cut from, and which of the kit's they are. Where the grain counts, all
/// stand with it upright; each has its own grain and pattern.
struct CardStock {
  std::vector<CutSheet> sheets;
  std::vector<int> of;
};

CardStock stockFor(const ClassKit& kit, const Card& card) {
  const bool listed = std::ranges::count(kit.stock, card.id, &StockSheet::card) > 0;
  CardStock stock;
  for (std::size_t i = 0; i < kit.stock.size(); ++i) {
    const StockSheet& of = kit.stock[i];
    if (of.card != (listed ? card.id : std::string())) continue;
    CutSheet sheet = cutSheet(of);
    const bool longUpright = sheet.height >= sheet.width;
    if (kit.keepGrain && of.grain != Grain::Unknown && (of.grain == Grain::Long) != longUpright)
      std::swap(sheet.width, sheet.height);
    sheet.mayTurn = !kit.keepGrain && !of.pattern;
    stock.sheets.push_back(sheet);
    stock.of.push_back(static_cast<int>(i));
  }
  return stock;
}

/// The problem with a card whose blanks only fit against the grain.
Problem grainProblem(const Problem& problem, CardStock stock, const CardPlan& card) {
  if (problem.code != ProblemCode::BlankTooLarge) return problem;
  for (CutSheet& sheet : stock.sheets) sheet.mayTurn = true;
  const bool turned = std::ranges::all_of(card.demands(), [&](const BlankDemand& demand) {
    return std::ranges::any_of(stock.sheets,
                               [&](const CutSheet& sheet) { return holds(sheet, demand); });
  });
  if (!turned) return problem;
  return {ProblemCode::GrainConflict, problem.where, {problem.values[0], problem.values[1]}};
}

std::optional<Problem> cutCard(PlanOptions options, CardPlan& card) {
  const CardStock stock = stockFor(card.kit(), card.card());
  options.noExtras = options.noExtras || card.kit().noExtras;
  Result<CuttingPlan> cutting = planCutting(stock.sheets, card.demands(), options);
  if (!cutting) return grainProblem(cutting.problem(), stock, card);
  card.plan = std::move(cutting).value();
  for (Layout& layout : card.plan.layouts)
    layout.stock = stock.of[static_cast<std::size_t>(layout.stock)];
  return std::nullopt;
}

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

}  // namespace

std::int64_t KitPlan::cost() const {
  std::int64_t sum = 0;
  for (const CardPlan& card : cards) sum += card.plan.cost;
  return sum;
}

Result<KitPlan> planKit(BuiltKit kit, const PlanOptions& options) {
  if (const std::optional<Problem> problem = namesProblem(kit.kit)) return *problem;
  KitPlan plan;
  plan.built = std::make_shared<const BuiltKit>(std::move(kit));
  Budget budget(options, plan.built->cards.size());
  for (std::size_t c = 0; c < plan.built->cards.size(); ++c) {
    CardPlan& card = plan.cards.emplace_back(CardPlan{plan.built, c, {}});
    if (const std::optional<Problem> problem = cutCard(budget.next(), card)) return *problem;
    budget.spend(card.plan.work);
    plan.sheets += card.plan.sheets;
    plan.proven = plan.proven && card.plan.proven();
  }
  return plan;
}

}  // namespace creasewright
