#include "papers/kit/kit_csv.h"

#include <QStringList>

#include "bridge/text.h"
#include "fit/card_pattern.h"
#include "kits/layout_drawing.h"
#include "papers/kit/kit_words.h"
#include "stock/csv.h"

namespace creasewright {

namespace {

QString field(const QString& words) {
  if (words.isEmpty()) return {};
  QString out = text(guardedField(words.toStdString()));
  out.replace(QLatin1Char('"'), QStringLiteral("\"\""));
  return QLatin1Char('"') + out + QLatin1Char('"');
}

QString number(Length length) { return QString::number(length.mm(), 'f', 3); }

}  // namespace

QByteArray kitCsv(const KitPlan& plan) {
  QStringList lines{
      QStringLiteral("card,layout,sheets,stock,blank,name,x_mm,y_mm,width_mm,height_mm,turned,plan,"
                     "colour,pattern")};
  int layouts = 0;
  for (const CardPlan& card : plan.cards) {
    for (const Layout& layout : card.plan.layouts) {
      ++layouts;
      const StockSheet& stock = card.sheetOf(layout);
      eachNode(layout.sheet, [&](const CutNode& node) {
        if (node.kind != CutNode::Kind::Blank) return;
        const QStringList fields{
            field(text(card.card().name)),
            QString::number(layouts),
            QString::number(layout.count),
            field(text(stock.name)),
            field(QString::fromStdString(demandLetter(card.firstLetter() + node.demand))),
            field(blankTitle(card, static_cast<std::size_t>(node.demand))),
            number(node.x),
            number(node.y),
            number(node.width),
            number(node.height),
            node.turned ? QStringLiteral("1") : QStringLiteral("0"),
            QString::fromUtf8(planGoalText(card.goal()).data()),
            field(text(cardColourText(card.card().colours))),
            field(text(patternText(card.card().colours)))};
        lines.append(fields.join(QLatin1Char(',')));
      });
    }
  }
  return (lines.join(QStringLiteral("\r\n")) + QStringLiteral("\r\n")).toUtf8();
}

}  // namespace creasewright
