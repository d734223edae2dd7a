#include "kits/offcut_uses.h"

#include <algorithm>

#include "cutting/plan_cutting.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

constexpr double kSeconds = 0.05;  // of work for each that is tried
constexpr double kPatience = 3;    // for all: what was found by then is told
constexpr int kMostPerSet = 12;    // more mats than that nobody glues on in a class

/// The offcuts of a card as sheets of which there are only so many.
std::vector<CutSheet> offcutSheets(const CardPlan& card) {
  std::vector<CutSheet> sheets;
  for (const Layout& layout : card.plan.layouts)
    for (const Offcut& offcut : offcutsOf(layout, kLeastOffcut))
      sheets.push_back({offcut.width, offcut.height, 0, offcut.count * layout.count,
                        !card.sheetOf(layout).pattern});
  return sheets;
}

/// The blanks of an extra that is not yet of an item's box, for all sets; none when the box cannot
/// have it.
std::vector<BlankDemand> blanksFor(const ClassKit& kit, const KitItem& item, const Extra& extra) {
  Design design = item.design;
  design.extras = {extra};
  const Result<BuiltDesign> built = build(design);
  std::vector<BlankDemand> blanks;
  if (!built || !onlyWarnings(built->problems)) return blanks;
  for (const BuiltPiece& piece : built->pieces)
    if (piece.role)
      blanks.push_back(
          blankOf(*built, piece, piece.name, piece.count * item.perPerson * kit.sets()));
  if (kit.keepGrain)
    for (BlankDemand& blank : blanks) blank.mayTurn = false;
  return blanks;
}

double areaOf(const std::vector<BlankDemand>& blanks) {
  double area = 0;
  for (const BlankDemand& blank : blanks)
    area += blank.width.mm() * blank.height.mm() * blank.quantity;
  return area;
}

double areaOf(const std::vector<CutSheet>& sheets) {
  double area = 0;
  for (const CutSheet& sheet : sheets) area += sheet.width.mm() * sheet.height.mm() * sheet.atHand;
  return area;
}

/// Takes the work that it is from `left`.
bool comesOut(const std::vector<CutSheet>& offcuts, const std::vector<BlankDemand>& blanks,
              double& left) {
  if (areaOf(blanks) > areaOf(offcuts)) return false;
  const auto plan = planCutting(offcuts, blanks, {.seconds = kSeconds, .fewestLayouts = false});
  left -= plan ? plan->work : kSeconds;
  return plan.ok();
}

bool has(const Design& design, std::string_view kind) {
  return std::ranges::count(design.extras, kind, &Extra::kind) > 0;
}

/// The cards in the order in which an item would have them: those that are not its own first.
std::vector<int> cardsFor(const KitItem& item, const KitPlan& plan) {
  std::vector<int> order;
  for (std::size_t c = 0; c < plan.cards.size(); ++c) order.push_back(static_cast<int>(c));
  std::ranges::stable_partition(order, [&](int c) {
    return !sameCard(plan.cards[static_cast<std::size_t>(c)].card(), item.design.card);
  });
  return order;
}

int quantityOf(const std::vector<BlankDemand>& blanks) {
  int sum = 0;
  for (const BlankDemand& blank : blanks) sum += blank.quantity;
  return sum;
}

}  // namespace

std::vector<OffcutUse> offcutUses(const KitPlan& plan) {
  const ClassKit& kit = plan.kit();
  std::vector<std::vector<CutSheet>> offcuts;
  for (const CardPlan& card : plan.cards) offcuts.push_back(offcutSheets(card));
  std::vector<OffcutUse> uses;
  double left = kPatience;
  for (std::size_t i = 0; i < kit.items.size(); ++i) {
    const KitItem& item = kit.items[i];
    for (const char* id : {"mats", "label"}) {
      const Result<const ExtraKind*> kind = findExtraKind(id);
      if (!kind || !item.piece.empty() || has(item.design, id)) continue;
      for (const int c : cardsFor(item, plan)) {
        if (left <= 0) return uses;
        const auto card = static_cast<std::size_t>(c);
        Extra extra = standardExtra(**kind, plan.cards[card].card());
        extra.card = plan.cards[card].card();
        const std::vector<BlankDemand> blanks = blanksFor(kit, item, extra);
        const int quantity = quantityOf(blanks);
        if (quantity == 0 || quantity > kMostPerSet * item.perPerson * kit.sets()) break;
        if (!comesOut(offcuts[card], blanks, left)) continue;
        uses.push_back({c, static_cast<int>(i), extra, quantity});
        break;
      }
    }
  }
  return uses;
}

}  // namespace creasewright
