#include "kits/cost_sheet.h"

#include <algorithm>
#include <cmath>

#include "guide/guide_time.h"
#include "kits/shopping.h"

namespace creasewright {
namespace {

/// What a millimetre of a roll costs, or a place of glue; nothing where no price is known.
std::optional<double> unitPrice(const SupplyItem& item) {
  const double units = item.kind == SupplyItemKind::Tape || item.kind == SupplyItemKind::Ribbon
                           ? item.length.mm()
                           : static_cast<double>(item.pieces);
  if (item.price <= 0 || units <= 0) return std::nullopt;
  return static_cast<double>(item.price) / units;
}

class CostWriter {
 public:
  CostWriter(const KitPlan& plan, const Pricing& pricing) : plan_(plan), pricing_(pricing) {}

  CostSheet write() {
    const ClassKit& kit = plan_.kit();
    std::vector<double> cards = cardShares();
    double bag = cards.back();
    for (std::size_t i = 0; i < kit.items.size(); ++i) {
      const KitItem& item = kit.items[i];
      BoxPrice box = boxOf(i, cards[i] / item.perPerson);
      const double material = static_cast<double>(box.card + box.sticky + box.ribbon);
      bag += material * item.perPerson;
      if (item.piece.empty()) sheet_.boxes.push_back(box);
    }
    sheet_.seat = seatOf(bag);
    return std::move(sheet_);
  }

 private:
  /// Coins in one set, by item, last of all plain blanks together.
  [[nodiscard]] std::vector<double> cardShares() {
    const ClassKit& kit = plan_.kit();
    std::vector<double> shares(kit.items.size() + 1, 0);
    for (const CardPlan& card : plan_.cards) {
      const double each = sheetsOf(card) / kit.takers;
      double all = 0;
      for (std::size_t d = 0; d < card.demands().size(); ++d) all += areaInSet(card, d);
      for (std::size_t d = 0; d < card.demands().size(); ++d) {
        const int item = card.sources()[d].item;
        shares[item < 0 ? kit.items.size() : static_cast<std::size_t>(item)] +=
            each * areaInSet(card, d) / all;
      }
    }
    return shares;
  }

  static double areaInSet(const CardPlan& card, std::size_t demand) {
    const BlankDemand& blank = card.demands()[demand];
    return blank.width.mm() * blank.height.mm() * card.sources()[demand].perSet;
  }

  /// The price of every sheet a card takes.
  [[nodiscard]] double sheetsOf(const CardPlan& card) {
    double coins = 0;
    for (const Layout& layout : card.plan.layouts) {
      const std::int64_t price = card.sheetOf(layout).price;
      sheet_.complete = sheet_.complete && price > 0;
      coins += static_cast<double>(price) * layout.count;
    }
    return coins;
  }

  /// What a length of a supply, or so many places, cost.
  [[nodiscard]] std::int64_t supplyCost(SupplyItemKind kind, Length width, double units) {
    const int index = supplyFor(plan_.kit(), kind, width);
    const auto price =
        index < 0 ? std::nullopt : unitPrice(plan_.kit().supplies[static_cast<std::size_t>(index)]);
    if (!price) sheet_.complete = false;
    return price ? std::llround(*price * units) : 0;
  }

  [[nodiscard]] BoxPrice boxOf(std::size_t index, double card) {
    const KitItem& item = plan_.kit().items[index];
    BoxPrice box;
    box.item = static_cast<int>(index);
    box.card = std::llround(card);
    if (!item.piece.empty()) return box;
    const Guide& guide = plan_.built->items[index]->guide;
    for (const Supply& supply : guide.supplies) {
      if (supply.kind == SupplyKind::Tape)
        box.sticky += supplyCost(SupplyItemKind::Tape, supply.width, supply.length.mm());
      if (supply.kind == SupplyKind::FoamDots)
        box.sticky += supplyCost(SupplyItemKind::FoamDots, supply.width, supply.quantity);
      if (supply.kind == SupplyKind::LiquidGlue)
        box.sticky += supplyCost(SupplyItemKind::Glue, {}, supply.quantity);
      if (supply.kind == SupplyKind::Ribbon)
        box.ribbon += supplyCost(SupplyItemKind::Ribbon, supply.width, supply.length.mm());
    }
    box.minutes = minutesFor(guide);
    box.work = std::llround(static_cast<double>(pricing_.hourlyRate) * box.minutes / 60);
    const std::int64_t direct = box.card + box.sticky + box.ribbon + box.work;
    box.overhead = std::llround(static_cast<double>(direct) * pricing_.overhead / 100);
    box.cost = direct + box.overhead;
    box.price = priceFor(static_cast<double>(box.cost));
    return box;
  }

  [[nodiscard]] std::int64_t priceFor(double cost) const {
    constexpr double kRounding = 1e-9;
    const double kept = (1 - pricing_.margin / 100.0) * (1 - pricing_.fee / 100.0);
    return static_cast<std::int64_t>(std::ceil(cost / kept - kRounding));
  }

  [[nodiscard]] SeatPrice seatOf(double bag) const {
    SeatPrice seat;
    seat.material = std::llround(bag * (1 + pricing_.overhead / 100.0));
    seat.share = static_cast<std::int64_t>(
        std::ceil(static_cast<double>(pricing_.classCosts) / plan_.kit().takers));
    seat.price = priceFor(static_cast<double>(seat.material + seat.share));
    const double over = static_cast<double>(seat.price) * (1 - pricing_.fee / 100.0) -
                        static_cast<double>(seat.material);
    if (pricing_.classCosts > 0 && over > 0)
      seat.breakEven =
          static_cast<int>(std::ceil(static_cast<double>(pricing_.classCosts) / over - 1e-9));
    return seat;
  }

  const KitPlan& plan_;
  const Pricing& pricing_;
  CostSheet sheet_;
};

}  // namespace

std::optional<CostSheet> costSheetOf(const KitPlan& plan) {
  const std::optional<Pricing>& pricing = plan.kit().pricing;
  if (!pricing) return std::nullopt;
  return CostWriter(plan, *pricing).write();
}

}  // namespace creasewright
