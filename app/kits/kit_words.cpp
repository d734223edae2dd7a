#include "kits/kit_words.h"

#include <QLocale>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "kits/layout_drawing.h"

namespace creasewright {

namespace {

QString size(Length width, Length height, Unit unit) {
  return lengthText(width, unit, false) + QStringLiteral(" × ") + lengthText(height, unit);
}

QString demandName(const CardPlan& card, std::size_t demand) {
  return text(card.demands[demand].name);
}

QString letter(std::size_t demand) {
  return QString::fromStdString(demandLetter(static_cast<int>(demand)));
}

QString cutSentence(const TrimCut& cut, bool turn, Unit unit) {
  const QString setting = lengthText(cut.setting, unit);
  return turn ? KitTr::tr("Turn, set %1 and cut.").arg(setting)
              : KitTr::tr("Set %1 and cut.").arg(setting);
}

}  // namespace

QString kitTitle(const ClassKit& kit) {
  return kit.title.empty() ? KitTr::tr("Class kit") : text(kit.title);
}

QString peopleSentence(const ClassKit& kit) {
  const QString people = KitTr::tr("For %n people", "", kit.takers);
  return kit.spares == 0 ? people
                         : KitTr::tr("%1, and %n spare set(s)", "", kit.spares).arg(people);
}

QString sheetsSentence(const KitPlan& plan) {
  std::int64_t bound = 0;
  bool priced = false;
  for (const CardPlan& card : plan.cards) {
    bound += card.plan.bound;
    priced = priced || card.plan.priced;
  }
  if (priced) {
    return plan.proven
               ? KitTr::tr("%n sheet(s) at the least price, proven: cheaper cannot do.", "",
                           plan.sheets)
               : KitTr::tr("%n sheet(s); a cheaper choice is not ruled out.", "", plan.sheets);
  }
  return plan.proven
             ? KitTr::tr("%n sheet(s), proven: fewer cannot do.", "", plan.sheets)
             : KitTr::tr("%n sheet(s); at least %1 are needed.", "", plan.sheets).arg(bound);
}

QString oneMoreSentence(int sheets) {
  return sheets <= 0 ? KitTr::tr("One more person would take no further sheet.")
                     : KitTr::tr("One more person would take %n sheet(s) more.", "", sheets);
}

QStringList packingLines(const KitPlan& plan, Unit unit) {
  QStringList lines;
  for (const CardPlan& card : plan.cards) {
    for (std::size_t d = 0; d < card.demands.size(); ++d) {
      lines.append(KitTr::tr("%n blank(s) %1: %2, %3", "", card.sources[d].perSet)
                       .arg(letter(d), demandName(card, d),
                            size(card.demands[d].width, card.demands[d].height, unit)));
    }
  }
  return lines;
}

LayoutWords wordLayout(int number, const Layout& layout, const CardPlan& card, const ClassKit& kit,
                       Unit unit) {
  LayoutWords words;
  const StockSheet& sheet = kit.stock.at(static_cast<std::size_t>(layout.stock));
  words.title = KitTr::tr("Layout %1: cut %n sheet(s) of %2 alike", "", layout.count)
                    .arg(number)
                    .arg(text(sheet.name));
  const std::vector<int> counts = blanksOf(layout, card.demands.size());
  for (std::size_t d = 0; d < counts.size(); ++d) {
    if (counts[d] > 0) {
      words.blanks.append(
          KitTr::tr("%n of %1: %2", "", counts[d]).arg(letter(d), demandName(card, d)));
    }
  }
  bool upright = true;
  for (const TrimCut& cut : trimSteps(layout)) {
    words.cuts.append(QStringLiteral("%1  %2")
                          .arg(cut.number)
                          .arg(cutSentence(cut, cut.upright != upright, unit)));
    upright = cut.upright;
  }
  for (const Offcut& offcut : offcutsOf(layout, Length::nanometres(30'000'000))) {
    words.offcuts.append(KitTr::tr("%n offcut(s) of %1, for labels and mats", "", offcut.count)
                             .arg(size(offcut.width, offcut.height, unit)));
  }
  return words;
}

}  // namespace creasewright
