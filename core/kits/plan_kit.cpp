#include "kits/plan_kit.h"

#include <algorithm>
#include <map>

#include "document/build.h"
#include "guide/make_guide.h"

namespace creasewright {
namespace {

bool sameCard(const Card& a, const Card& b) { return a.id == b.id && a.caliper == b.caliper; }

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
  CardPlan& card = cardPlanOf(built.design.card, plan);
  for (const BuiltPiece& piece : built.pieces) {
    const int perSet = kit.items[static_cast<std::size_t>(item)].perPerson * piece.piece.count;
    card.demands.push_back({nameOf(built, piece), Length::mm(piece.flat.width),
                            Length::mm(piece.flat.height), perSet * kit.sets(), true});
    card.sources.push_back({item, piece.piece.name, perSet});
  }
}

void addSupplies(const Guide& guide, int sets, std::map<Length, TapeNeed>& tapes, int& glue) {
  for (const Supply& supply : guide.supplies) {
    if (supply.kind == SupplyKind::LiquidGlue) glue += supply.quantity * sets;
    if (supply.kind != SupplyKind::Tape) continue;
    TapeNeed& tape = tapes[supply.width];
    tape.width = supply.width;
    tape.length += supply.length * sets;
    tape.strips += supply.quantity * sets;
  }
}

}  // namespace

Result<KitPlan> planKit(const ClassKit& kit, const PlanOptions& options) {
  if (kit.takers < 1 || kit.sets() > 2 * kMostTakers || kit.takers > kMostTakers)
    return Problem{ProblemCode::TakersWrong,
                   "takers",
                   {std::int64_t{kit.takers}, std::int64_t{1}, std::int64_t{kMostTakers}}};
  KitPlan plan;
  std::map<Length, TapeNeed> tapes;
  for (std::size_t i = 0; i < kit.items.size(); ++i) {
    const Result<BuiltDesign> built = build(kit.items[i].design);
    if (!built) return built.problem();
    addBlanks(kit, static_cast<int>(i), *built, plan);
    addSupplies(makeGuide(*built), kit.sets() * kit.items[i].perPerson, tapes, plan.gluePlaces);
  }
  if (plan.cards.empty()) return Problem{ProblemCode::NoDemand, {}, {}};
  for (const auto& [width, tape] : tapes) plan.tapes.push_back(tape);
  for (CardPlan& card : plan.cards) {
    Result<CuttingPlan> cutting = planCutting(kit.stock, card.demands, options);
    if (!cutting) return cutting.problem();
    card.plan = std::move(cutting).value();
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
