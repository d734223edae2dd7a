#include "kits/cost_sheet.h"
#include "papers/kit/kit_words.h"

namespace creasewright {

namespace {

/// `18.57 EUR`.
QString money(std::int64_t coins, const Pricing& pricing) {
  const QString amount = moneyText(coins);
  return pricing.currency.empty()
             ? amount
             : QStringLiteral("%1 %2").arg(amount, QString::fromStdString(pricing.currency));
}

/// What makes up the cost, in order, and the sum.
QString boxCost(const BoxPrice& box, const QString& title, const Pricing& pricing) {
  QStringList parts{KitTr::tr("card %1").arg(moneyText(box.card))};
  if (box.sticky > 0) parts.append(KitTr::tr("tape and glue %1").arg(moneyText(box.sticky)));
  if (box.ribbon > 0) parts.append(KitTr::tr("ribbon %1").arg(moneyText(box.ribbon)));
  if (box.work > 0)
    parts.append(KitTr::tr("%n minute(s) of work %1", "", box.minutes).arg(moneyText(box.work)));
  if (box.overhead > 0)
    parts.append(KitTr::tr("%1 % overhead %2").arg(pricing.overhead).arg(moneyText(box.overhead)));
  return KitTr::tr("“%1”: %2; cost in all %3.")
      .arg(title, parts.join(QStringLiteral(", ")), money(box.cost, pricing));
}

/// The price, and what goes off it.
QString priceWords(std::int64_t price, const Pricing& pricing) {
  const QString shown = money(price, pricing);
  return pricing.fee > 0 ? KitTr::tr("%1, of which %2 % is margin after a fee of %3 %")
                               .arg(shown)
                               .arg(pricing.margin)
                               .arg(pricing.fee)
                         : KitTr::tr("%1, of which %2 % is margin").arg(shown).arg(pricing.margin);
}

QStringList seatLines(const SeatPrice& seat, const Pricing& pricing) {
  QStringList lines;
  lines.append(seat.share > 0
                   ? KitTr::tr("A seat: material %1, share of the class’s costs %2. Price: %3.")
                         .arg(moneyText(seat.material), moneyText(seat.share),
                              priceWords(seat.price, pricing))
                   : KitTr::tr("A seat: material %1. Price: %2.")
                         .arg(moneyText(seat.material), priceWords(seat.price, pricing)));
  if (seat.breakEven)
    lines.append(KitTr::tr("At that price the class pays for itself from %n person(s) on.", "",
                           *seat.breakEven));
  return lines;
}

}  // namespace

QStringList costLines(const KitPlan& plan) {
  const std::optional<CostSheet> costs = costSheetOf(plan);
  if (!costs) return {};
  const Pricing& pricing = *plan.kit().pricing;
  QStringList lines;
  for (const BoxPrice& box : costs->boxes) {
    const KitItem& item = plan.kit().items.at(static_cast<std::size_t>(box.item));
    lines.append(boxCost(box, itemTitle(item), pricing));
    lines.append(
        KitTr::tr("Price of “%1”: %2.").arg(itemTitle(item), priceWords(box.price, pricing)));
  }
  lines += seatLines(costs->seat, pricing);
  if (!costs->complete)
    lines.append(
        KitTr::tr("Some sheets or supplies have no price yet: what they cost is missing."));
  return lines;
}

}  // namespace creasewright
