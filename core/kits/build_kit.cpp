#include "kits/build_kit.h"

#include <algorithm>
#include <map>

#include "base/excerpt.h"
#include "document/paper_way.h"
#include "document/with_punches.h"
#include "guide/extra_steps.h"
#include "guide/guide_time.h"
#include "guide/make_guide.h"

namespace creasewright {
namespace {

std::string titleOf(const BuiltDesign& built) {
  return built.design.title.empty() ? std::string(built.style->title) : built.design.title;
}

std::string nameOf(const BuiltDesign& built, const BuiltPiece& piece) {
  return built.pieces.size() == 1 ? titleOf(built) : titleOf(built) + ": " + piece.name;
}

/// The names of a design's pieces, as in a list.
std::string piecesOf(const BuiltDesign& built) {
  std::string names;
  for (const BuiltPiece& piece : built.pieces) names += (names.empty() ? "" : ", ") + piece.name;
  return names;
}

void addDemand(const Card& of, BlankDemand demand, BlankSource source, BuiltKit& built) {
  auto card = std::ranges::find_if(
      built.cards, [&](const CardBlanks& other) { return sameCard(other.card, of); });
  if (card == built.cards.end()) card = built.cards.insert(card, {of, {}, {}, 0});
  card->demands.push_back(std::move(demand));
  card->sources.push_back(std::move(source));
}

std::optional<Problem> addBlanks(std::size_t index, BuiltKit& built) {
  const KitItem& item = built.kit.items[index];
  const BuiltDesign& design = built.items[index]->design;
  bool found = false;
  for (std::size_t p = 0; p < design.pieces.size(); ++p) {
    const BuiltPiece& piece = design.pieces[p];
    if (!item.cuts(piece.name)) continue;
    found = true;
    const int perSet = item.perPerson * piece.count;
    addDemand(piece.card, blankOf(design, piece, nameOf(design, piece), perSet * built.kit.sets()),
              {static_cast<int>(index), piece.name, perSet, design.pieces.size() == 1, p,
               punchFor(design, piece)},
              built);
  }
  if (found) return std::nullopt;
  return Problem{
      ProblemCode::PieceUnknown, titleOf(design), {excerpt(item.piece), piecesOf(design)}};
}

void addPlainBlanks(BuiltKit& built) {
  for (const PlainBlank& blank : built.kit.blanks)
    addDemand(blank.card,
              {blank.name, blank.width, blank.height, blank.perPerson * built.kit.sets(),
               !hasWay(blank.card)},
              {-1, {}, blank.perPerson}, built);
}

/// Width or thickness, and a ribbon's colour as text.
using NeedKey = std::pair<Length, std::string>;

struct Needs {
  std::map<NeedKey, TapeNeed> foams;
  std::map<NeedKey, TapeNeed> tapes;
  std::map<NeedKey, TapeNeed> ribbons;
};

void addSupplies(const BuiltItem& item, int sets, Needs& needs, int& glue) {
  for (const Supply& supply : item.guide.supplies) {
    if (supply.kind == SupplyKind::LiquidGlue) glue += supply.quantity * sets;
    std::map<NeedKey, TapeNeed>* all = supply.kind == SupplyKind::Tape       ? &needs.tapes
                                       : supply.kind == SupplyKind::Ribbon   ? &needs.ribbons
                                       : supply.kind == SupplyKind::FoamDots ? &needs.foams
                                                                             : nullptr;
    if (all == nullptr) continue;
    const std::optional<Colour> colour = ribbonColour(item.design, supply.extra);
    TapeNeed& tape = (*all)[{supply.width, colour ? hexText(*colour) : std::string()}];
    tape.width = supply.width;
    tape.colour = colour;
    tape.length += supply.length * sets;
    tape.strips += supply.quantity * sets;
  }
}

/// What goes with the designs that are made whole.
void addSupplies(BuiltKit& built) {
  Needs needs;
  for (std::size_t i = 0; i < built.items.size(); ++i) {
    const KitItem& item = built.kit.items[i];
    if (item.piece.empty())
      addSupplies(*built.items[i], built.kit.sets() * item.perPerson, needs, built.gluePlaces);
  }
  for (const auto& [key, tape] : needs.tapes) built.tapes.push_back(tape);
  for (const auto& [key, ribbon] : needs.ribbons) built.ribbons.push_back(ribbon);
  for (const auto& [key, foam] : needs.foams) built.foams.push_back(foam);
}

Result<std::shared_ptr<const BuiltItem>> builtItem(const Design& design, const BuiltKit* known) {
  if (known != nullptr) {
    const auto item = std::ranges::find_if(
        known->items, [&](const auto& other) { return other->design.design == design; });
    if (item != known->items.end()) return *item;
  }
  Result<BuiltDesign> built = build(design);
  if (!built) return built.problem();
  Guide guide = makeGuide(*built);
  return std::make_shared<const BuiltItem>(BuiltItem{std::move(built).value(), std::move(guide)});
}

std::optional<Problem> takersProblem(const ClassKit& kit) {
  if (kit.takers >= 1 && kit.takers <= kMostTakers && kit.sets() <= 2 * kMostTakers)
    return std::nullopt;
  return Problem{ProblemCode::TakersWrong,
                 "takers",
                 {std::int64_t{kit.takers}, std::int64_t{1}, std::int64_t{kMostTakers}}};
}

}  // namespace

int BuiltKit::minutes(std::size_t item) const {
  const KitItem& of = kit.items[item];
  return of.piece.empty() ? minutesFor(items[item]->guide) * of.perPerson : 0;
}

BlankDemand blankOf(const BuiltDesign& design, const BuiltPiece& piece, std::string name,
                    int quantity) {
  const auto [width, height] = blankSize(piece);
  BlankDemand blank{std::move(name), width, height, quantity, true};
  if (!hasWay(piece.card)) return blank;
  blank.mayTurn = false;
  if (quartersToPaper(design, piece) % 2 == 1) std::swap(blank.width, blank.height);
  return blank;
}

Result<BuiltKit> buildKit(ClassKit kit, const BuiltKit* known) {
  if (const std::optional<Problem> problem = takersProblem(kit)) return *problem;
  BuiltKit built;
  built.kit = std::move(kit);
  for (std::size_t i = 0; i < built.kit.items.size(); ++i) {
    Result<std::shared_ptr<const BuiltItem>> item = builtItem(built.kit.items[i].design, known);
    if (!item) return item.problem();
    built.items.push_back(std::move(item).value());
    if (const std::optional<Problem> problem = addBlanks(i, built)) return *problem;
  }
  addPlainBlanks(built);
  if (built.cards.empty()) return Problem{ProblemCode::NoDemand, {}, {}};
  int letter = 0;
  for (CardBlanks& card : built.cards) {
    card.firstLetter = letter;
    letter += static_cast<int>(card.demands.size());
  }
  addSupplies(built);
  return built;
}

}  // namespace creasewright
