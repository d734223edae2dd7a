#include <QLocale>
#include <algorithm>

#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "kits/shopping.h"
#include "papers/kit/kit_words.h"

namespace creasewright {

namespace {

/// A length as tape and ribbon are sold: by the metre, or by the yard where inches are read.
QString runWords(Length length, Unit unit) {
  constexpr double kYard = 914.4;  // mm
  return unit == Unit::Inch
             ? KitTr::tr("%1 yd").arg(QLocale().toString(length.mm() / kYard, 'f', 1))
             : KitTr::tr("%1 m").arg(QLocale().toString(length.mm() / 1000, 'f', 1));
}

/// A user's own code in brackets after a name.
QString coded(const std::string& name, const std::string& code) {
  return code.empty() ? stockName(name)
                      : QStringLiteral("%1 [%2]").arg(stockName(name), text(code));
}

QString sheetWords(const ShoppingLine& line, const KitPlan& plan, Unit unit) {
  const StockSheet& sheet = plan.kit().stock.at(static_cast<std::size_t>(line.stock));
  const Card& card = plan.cards.at(static_cast<std::size_t>(line.card)).card();
  const QString size =
      lengthText(sheet.width, unit, false) + QStringLiteral(" × ") + lengthText(sheet.height, unit);
  const QString name = coded(sheet.name, sheet.code);
  const bool isSize = QString(name).replace(QLatin1String(" x "), QStringLiteral(" × ")) == size;
  if (isSize) return KitTr::tr("%n sheet(s) of %1, %2", "", line.needed).arg(cardName(card), size);
  return KitTr::tr("%n sheet(s) of %1, %2 (%3)", "", line.needed).arg(cardName(card), name, size);
}

QString supplyWords(const ShoppingLine& line, const ClassKit& kit, Unit unit) {
  switch (line.kind) {
    case ShoppingLine::Kind::Sheets:
      break;
    case ShoppingLine::Kind::Tape:
      return KitTr::tr("Double-sided tape %1 wide: %2 in %n strip(s)", "", line.strips)
          .arg(lengthText(line.width, unit), runWords(line.length, unit));
    case ShoppingLine::Kind::Ribbon:
      if (line.colour) {
        return KitTr::tr("Ribbon %1 wide, %3: %2 in %n piece(s)", "", line.strips)
            .arg(lengthText(line.width, unit), runWords(line.length, unit),
                 colourName(*line.colour));
      }
      return KitTr::tr("Ribbon %1 wide: %2 in %n piece(s)", "", line.strips)
          .arg(lengthText(line.width, unit), runWords(line.length, unit));
    case ShoppingLine::Kind::Foam:
      return KitTr::tr("%n foam dot(s), %1 thick", "", line.strips)
          .arg(lengthText(line.width, unit));
    case ShoppingLine::Kind::Glue:
      return KitTr::tr("Liquid glue for %n place(s)", "", line.strips);
  }
  if (line.supply < 0) return {};
  return coded(kit.supplies.at(static_cast<std::size_t>(line.supply)).name, {});
}

/// How many packs that makes, of which item.
QString packWords(const ShoppingLine& line, const ClassKit& kit) {
  if (line.supply < 0) return {};
  const SupplyItem& item = kit.supplies.at(static_cast<std::size_t>(line.supply));
  return KitTr::tr("%n pack(s) of %1", "", line.needed).arg(coded(item.name, item.code));
}

/// What is there already, and what the rest costs.
QString buyWords(const ShoppingLine& line) {
  QStringList parts;
  if (line.atHand > 0) {
    parts.append(KitTr::tr("%n at hand", "", line.atHand));
    parts.append(KitTr::tr("%n to buy", "", line.toBuy));
  }
  if (line.cost > 0) parts.append(KitTr::tr("costs %1").arg(moneyText(line.cost)));
  return parts.join(QStringLiteral(", "));
}

QString lineWords(const ShoppingLine& line, const KitPlan& plan, Unit unit) {
  const ClassKit& kit = plan.kit();
  QStringList parts{line.kind == ShoppingLine::Kind::Sheets ? sheetWords(line, plan, unit)
                                                            : supplyWords(line, kit, unit)};
  for (const QString& part : {packWords(line, kit), buyWords(line)})
    if (!part.isEmpty()) parts.append(part);
  return parts.join(QStringLiteral("; "));
}

}  // namespace

QStringList shoppingLines(const KitPlan& plan, Unit unit) {
  const ShoppingList list = shoppingFor(plan);
  QStringList lines;
  for (const ShoppingLine& line : list.lines) lines.append(lineWords(line, plan, unit));
  if (list.cost > 0) {
    const QString all = moneyText(list.cost);
    const QString each = moneyText(list.cost / std::max(1, plan.kit().sets()));
    lines.append(list.complete
                     ? KitTr::tr("To buy in all: %1, which is %2 a set.").arg(all, each)
                     : KitTr::tr("To buy in all: %1, which is %2 a set; some prices are not known.")
                           .arg(all, each));
  }
  return lines;
}

QString itemTitle(const KitItem& item) {
  if (!item.design.title.empty()) return text(item.design.title);
  return styleTitle(item.design);
}

}  // namespace creasewright
