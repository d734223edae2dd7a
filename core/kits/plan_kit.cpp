#include "kits/plan_kit.h"

#include <algorithm>
#include <map>

#include "document/build.h"
#include "guide/guide_time.h"
#include "guide/make_guide.h"

namespace creasewright {
namespace {

CardPlan& cardPlanOf(const Card& card, KitPlan& plan) {
  const auto found = std::ranges::find_if(
      plan.cards, [&](const CardPlan& other) { return sameCard(other.card, card); });
  if (found != plan.cards.end()) return *found;
  plan.cards.push_back({card, {}, {}, {}});
  return plan.cards.back();
}

std::string nameOf(const BuiltDesign& built, const BuiltPiece& piece) {
  const std::string title =
      built.design.title.empty() ? std::string(built.style->title) : built.design.title;
  return built.pieces.size() == 1 ? title : title + ": " + piece.piece.name;
}

void addBlanks(const ClassKit& kit, int item, const BuiltDesign& built, KitPlan& plan) {
  for (const BuiltPiece& piece : built.pieces) {
    CardPlan& card = cardPlanOf(piece.card, plan);
    const int perSet = kit.items[static_cast<std::size_t>(item)].perPerson * piece.piece.count;
    card.demands.push_back({nameOf(built, piece), Length::mm(piece.flat.width),
                            Length::mm(piece.flat.height), perSet * kit.sets(), true});
    card.sources.push_back({item, piece.piece.name, perSet});
  }
}

struct Needs {
  std::map<Length, TapeNeed> tapes;
  std::map<Length, TapeNeed> ribbons;
};

void addSupplies(const Guide& guide, int sets, Needs& needs, int& glue) {
  for (const Supply& supply : guide.supplies) {
    if (supply.kind == SupplyKind::LiquidGlue) glue += supply.quantity * sets;
    if (supply.kind != SupplyKind::Tape && supply.kind != SupplyKind::Ribbon) continue;
    TapeNeed& tape = (supply.kind == SupplyKind::Tape ? needs.tapes : needs.ribbons)[supply.width];
    tape.width = supply.width;
    tape.length += supply.length * sets;
    tape.strips += supply.quantity * sets;
  }
}

/// The sheets a card may be cut from, and which of the kit's they are. Where the grain counts, all
/// stand with it upright.
struct CardStock {
  std::vector<StockSheet> sheets;
  std::vector<int> of;
  bool mayTurn = true;
};

CardStock stockFor(const ClassKit& kit, const Card& card) {
  const bool listed = std::ranges::count(kit.stock, card.id, &StockSheet::card) > 0;
  CardStock stock;
  for (std::size_t i = 0; i < kit.stock.size(); ++i) {
    StockSheet sheet = kit.stock[i];
    if (sheet.card != (listed ? card.id : std::string())) continue;
    const bool longUpright = sheet.height >= sheet.width;
    if (kit.keepGrain && sheet.grain != Grain::Unknown &&
        (sheet.grain == Grain::Long) != longUpright)
      std::swap(sheet.width, sheet.height);
    stock.mayTurn = stock.mayTurn && !kit.keepGrain && !sheet.pattern;
    stock.sheets.push_back(std::move(sheet));
    stock.of.push_back(static_cast<int>(i));
  }
  return stock;
}

/// The problem with a card whose blanks only fit against the grain.
Problem grainProblem(const Problem& problem, const CardStock& stock, CardPlan card) {
  if (problem.code != ProblemCode::BlankTooLarge || stock.mayTurn) return problem;
  for (BlankDemand& demand : card.demands) demand.mayTurn = true;
  if (!planCutting(stock.sheets, card.demands, {.seconds = 0.1, .fewestLayouts = false}))
    return problem;
  return {ProblemCode::GrainConflict, problem.where, {problem.values[0], problem.values[1]}};
}

std::optional<Problem> cutCard(const ClassKit& kit, const PlanOptions& options, CardPlan& card) {
  const CardStock stock = stockFor(kit, card.card);
  for (BlankDemand& demand : card.demands) demand.mayTurn = stock.mayTurn;
  Result<CuttingPlan> cutting = planCutting(stock.sheets, card.demands, options);
  if (!cutting) return grainProblem(cutting.problem(), stock, card);
  card.plan = std::move(cutting).value();
  for (Layout& layout : card.plan.layouts)
    layout.stock = stock.of[static_cast<std::size_t>(layout.stock)];
  return std::nullopt;
}

}  // namespace

Result<KitPlan> planKit(const ClassKit& kit, const PlanOptions& options) {
  if (kit.takers < 1 || kit.sets() > 2 * kMostTakers || kit.takers > kMostTakers)
    return Problem{ProblemCode::TakersWrong,
                   "takers",
                   {std::int64_t{kit.takers}, std::int64_t{1}, std::int64_t{kMostTakers}}};
  KitPlan plan;
  Needs needs;
  for (std::size_t i = 0; i < kit.items.size(); ++i) {
    const Result<BuiltDesign> built = build(kit.items[i].design);
    if (!built) return built.problem();
    addBlanks(kit, static_cast<int>(i), *built, plan);
    const Guide guide = makeGuide(*built);
    plan.minutes.push_back(minutesFor(guide) * kit.items[i].perPerson);
    addSupplies(guide, kit.sets() * kit.items[i].perPerson, needs, plan.gluePlaces);
  }
  if (plan.cards.empty()) return Problem{ProblemCode::NoDemand, {}, {}};
  for (const auto& [width, tape] : needs.tapes) plan.tapes.push_back(tape);
  for (const auto& [width, ribbon] : needs.ribbons) plan.ribbons.push_back(ribbon);
  for (CardPlan& card : plan.cards) {
    if (const std::optional<Problem> problem = cutCard(kit, options, card)) return *problem;
    plan.sheets += card.plan.sheets;
    plan.proven = plan.proven && card.plan.proven();
  }
  return plan;
}

std::optional<int> sheetsForOneMore(const ClassKit& kit, const KitPlan& plan) {
  ClassKit larger = kit;
  ++larger.takers;
  const Result<KitPlan> more = planKit(larger, {.seconds = 1, .fewestLayouts = false});
  if (!more) return std::nullopt;
  return more->sheets - plan.sheets;
}

}  // namespace creasewright
