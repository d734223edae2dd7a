#include "kits/plan_kit.h"

#include <algorithm>
#include <map>

#include "base/excerpt.h"
#include "document/build.h"
#include "guide/guide_time.h"
#include "guide/make_guide.h"

namespace creasewright {
namespace {

CardPlan& cardPlanOf(const Card& card, KitPlan& plan) {
  const auto found = std::ranges::find_if(
      plan.cards, [&](const CardPlan& other) { return sameCard(other.card, card); });
  if (found != plan.cards.end()) return *found;
  plan.cards.push_back({card, {}, {}, {}, 0});
  return plan.cards.back();
}

std::string titleOf(const BuiltDesign& built) {
  return built.design.title.empty() ? std::string(built.style->title) : built.design.title;
}

std::string nameOf(const BuiltDesign& built, const BuiltPiece& piece) {
  return built.pieces.size() == 1 ? titleOf(built) : titleOf(built) + ": " + piece.piece.name;
}

void addDemand(const Card& of, BlankDemand demand, BlankSource source, KitPlan& plan) {
  CardPlan& card = cardPlanOf(of, plan);
  card.demands.push_back(std::move(demand));
  card.sources.push_back(std::move(source));
}

/// The names of a design's pieces, as in a list.
std::string piecesOf(const BuiltDesign& built) {
  std::string names;
  for (const BuiltPiece& piece : built.pieces)
    names += (names.empty() ? "" : ", ") + piece.piece.name;
  return names;
}

std::optional<Problem> addBlanks(const ClassKit& kit, int index, const BuiltDesign& built,
                                 KitPlan& plan) {
  const KitItem& item = kit.items[static_cast<std::size_t>(index)];
  bool found = false;
  for (const BuiltPiece& piece : built.pieces) {
    if (!item.cuts(piece.piece.name)) continue;
    found = true;
    const int perSet = item.perPerson * piece.piece.count;
    addDemand(piece.card,
              {nameOf(built, piece), Length::mm(piece.flat.width), Length::mm(piece.flat.height),
               perSet * kit.sets(), true},
              {index, piece.piece.name, perSet, built.pieces.size() == 1}, plan);
  }
  if (found) return std::nullopt;
  return Problem{ProblemCode::PieceUnknown, titleOf(built), {excerpt(item.piece), piecesOf(built)}};
}

void addPlainBlanks(const ClassKit& kit, KitPlan& plan) {
  for (const PlainBlank& blank : kit.blanks)
    addDemand(blank.card,
              {blank.name, blank.width, blank.height, blank.perPerson * kit.sets(), true},
              {-1, {}, blank.perPerson}, plan);
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
/// stand with it upright; each has its own grain and pattern.
struct CardStock {
  std::vector<StockSheet> sheets;
  std::vector<int> of;
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
    sheet.mayTurn = !kit.keepGrain && !sheet.pattern;
    stock.sheets.push_back(std::move(sheet));
    stock.of.push_back(static_cast<int>(i));
  }
  return stock;
}

/// The problem with a card whose blanks only fit against the grain.
Problem grainProblem(const Problem& problem, CardStock stock, const CardPlan& card) {
  if (problem.code != ProblemCode::BlankTooLarge) return problem;
  for (StockSheet& sheet : stock.sheets) sheet.mayTurn = true;
  const bool turned = std::ranges::all_of(card.demands, [&](const BlankDemand& demand) {
    return std::ranges::any_of(stock.sheets,
                               [&](const StockSheet& sheet) { return holds(sheet, demand); });
  });
  if (!turned) return problem;
  return {ProblemCode::GrainConflict, problem.where, {problem.values[0], problem.values[1]}};
}

std::optional<Problem> cutCard(const ClassKit& kit, PlanOptions options, CardPlan& card) {
  const CardStock stock = stockFor(kit, card.card);
  options.noExtras = options.noExtras || kit.noExtras;
  Result<CuttingPlan> cutting = planCutting(stock.sheets, card.demands, options);
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

/// The blanks of an item, the time it takes and what goes with it; of a single piece the blanks
/// only.
std::optional<Problem> addItem(const ClassKit& kit, std::size_t index, KitPlan& plan,
                               Needs& needs) {
  const KitItem& item = kit.items[index];
  const Result<BuiltDesign> built = build(item.design);
  if (!built) return built.problem();
  if (std::optional<Problem> problem = addBlanks(kit, static_cast<int>(index), *built, plan))
    return problem;
  plan.minutes.push_back(0);
  if (!item.piece.empty()) return std::nullopt;
  const Guide guide = makeGuide(*built);
  plan.minutes.back() = minutesFor(guide) * item.perPerson;
  addSupplies(guide, kit.sets() * item.perPerson, needs, plan.gluePlaces);
  return std::nullopt;
}

/// One set, cut from the sheets that the plan leaves.
ClassKit oneBeside(const ClassKit& kit, const KitPlan& plan) {
  ClassKit one = kit;
  one.takers = 1;
  one.spares = 0;
  one.names.clear();
  for (const CardPlan& card : plan.cards)
    for (const Layout& layout : card.plan.layouts) {
      int& atHand = one.stock[static_cast<std::size_t>(layout.stock)].atHand;
      if (atHand >= 0) atHand = std::max(0, atHand - layout.count);
    }
  return one;
}

/// A name without a set would get no bag and no part.
std::optional<Problem> takersProblem(const ClassKit& kit) {
  if (kit.takers >= 1 && kit.takers <= kMostTakers && kit.sets() <= 2 * kMostTakers) {
    if (kit.names.size() <= static_cast<std::size_t>(kit.sets())) return std::nullopt;
    return Problem{ProblemCode::NamesTooMany,
                   {},
                   {static_cast<std::int64_t>(kit.names.size()), std::int64_t{kit.sets()}}};
  }
  return Problem{ProblemCode::TakersWrong,
                 "takers",
                 {std::int64_t{kit.takers}, std::int64_t{1}, std::int64_t{kMostTakers}}};
}

}  // namespace

std::int64_t KitPlan::cost() const {
  std::int64_t sum = 0;
  for (const CardPlan& card : cards) sum += card.plan.cost;
  return sum;
}

Result<KitPlan> planKit(const ClassKit& kit, const PlanOptions& options) {
  if (const std::optional<Problem> problem = takersProblem(kit)) return *problem;
  KitPlan plan;
  Needs needs;
  for (std::size_t i = 0; i < kit.items.size(); ++i)
    if (const std::optional<Problem> problem = addItem(kit, i, plan, needs)) return *problem;
  addPlainBlanks(kit, plan);
  if (plan.cards.empty()) return Problem{ProblemCode::NoDemand, {}, {}};
  for (const auto& [width, tape] : needs.tapes) plan.tapes.push_back(tape);
  for (const auto& [width, ribbon] : needs.ribbons) plan.ribbons.push_back(ribbon);
  int letter = 0;
  Budget budget(options, plan.cards.size());
  for (CardPlan& card : plan.cards) {
    if (const std::optional<Problem> problem = cutCard(kit, budget.next(), card)) return *problem;
    budget.spend(card.plan.work);
    card.firstLetter = letter;
    letter += static_cast<int>(card.demands.size());
    plan.sheets += card.plan.sheets;
    plan.proven = plan.proven && card.plan.proven();
  }
  return plan;
}

std::optional<OneMore> oneMoreFor(const ClassKit& kit, const KitPlan& plan) {
  const PlanOptions quick{.seconds = 1, .fewestLayouts = false};
  ClassKit larger = kit;
  ++larger.takers;
  const Result<KitPlan> anew = planKit(larger, quick);
  const Result<KitPlan> beside = planKit(oneBeside(kit, plan), quick);
  if (!anew && !beside) return std::nullopt;
  OneMore more{0, 0, true};
  bool priced = true;
  for (std::size_t c = 0; c < plan.cards.size(); ++c) {
    const CuttingPlan& now = plan.cards[c].plan;
    const CuttingPlan* whole = anew ? &anew->cards[c].plan : nullptr;
    const CuttingPlan* part = beside ? &beside->cards[c].plan : nullptr;
    const bool cheaper =
        part == nullptr || (whole != nullptr && whole->cost <= now.cost + part->cost);
    // What is planned for more people does for fewer, so nothing is ever saved by one more.
    const std::int64_t cost =
        std::max<std::int64_t>(0, cheaper ? whole->cost - now.cost : part->cost);
    more.sheets += std::max(0, cheaper ? whole->sheets - now.sheets : part->sheets);
    more.price += cost;
    more.proven =
        more.proven && whole != nullptr && now.proven() && now.cost + cost == whole->bound;
    priced = priced && now.priced;
  }
  if (!priced) more.price = 0;
  return more;
}

}  // namespace creasewright
