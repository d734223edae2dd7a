#include "papers/kit/kit_words.h"

#include <QLocale>
#include <algorithm>
#include <map>

#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "cutting/trim_steps.h"
#include "kits/layout_drawing.h"
#include "kits/offcut_uses.h"

namespace creasewright {

namespace {

QString size(Length width, Length height, Unit unit) {
  return lengthText(width, unit, false) + QStringLiteral(" × ") + lengthText(height, unit);
}

QString letter(const CardPlan& card, std::size_t demand) {
  return QString::fromStdString(demandLetter(card.firstLetter() + static_cast<int>(demand)));
}

/// A name whose words stay on one line.
QString unbroken(QString name) { return name.replace(QLatin1Char(' '), QChar(QChar::Nbsp)); }

/// How a pattern lies on the sheet as it is drawn; a sheet that is turned for its first cut is
/// laid by the words of that.
QString patternNote(const Layout& layout, const CardPlan& card) {
  const std::optional<PaperPattern>& paper = card.card().colours.pattern;
  const bool turned = liesTurned(layout);
  if (!paper || turnsOf(*paper) != Turns::None) {
    return turned ? KitTr::tr("As the sheet lies drawn, the pattern runs from left to right.")
                  : KitTr::tr("Lay the sheet as drawn: the pattern runs up and down.");
  }
  const QString top = turned
                          ? KitTr::tr("As the sheet lies drawn, the pattern’s top is at the right.")
                          : KitTr::tr("Lay the sheet as drawn: the pattern’s top is at the top.");
  return KitTr::tr("%1 Mark the edge that the arrow points to on the back of each blank.").arg(top);
}

/// Whether a layout is cut across the grain's or pattern's way is told by the sheets; what else a
/// person must mind about a sheet is said here.
QStringList sheetNotes(const StockSheet& sheet, const Layout& layout, const CardPlan& card) {
  QStringList notes;
  const bool keepGrain = card.kit().keepGrain;
  if (keepGrain && sheet.grain != Grain::Unknown) {
    const bool tall = layout.sheet.height >= layout.sheet.width;
    if (liesTurned(layout))
      notes.append(tall ? KitTr::tr("Lay the sheet on its long side as drawn: its grain runs from "
                                    "left to right.")
                        : KitTr::tr("Lay the sheet upright as drawn: its grain runs from left to "
                                    "right."));
    else
      notes.append(tall ? KitTr::tr("Lay the sheet upright as drawn: its grain runs up and down.")
                        : KitTr::tr("Lay the sheet on its long side as drawn: its grain runs up "
                                    "and down."));
  }
  if (sheet.oneSided)
    notes.append(KitTr::tr("The sheet has one good face: trace and score on the other."));
  if (sheet.pattern || hasWay(card.card())) notes.append(patternNote(layout, card));
  return notes;
}

/// What is taken up before a setting's first cut; nothing where the part lies there already.
QString takeUp(const TrimStep& step) {
  if (!step.first || (step.from == 0 && step.upright)) return {};
  if (step.from == 0) return KitTr::tr("Lay the sheet as drawn, a quarter turned.");
  if (step.rest) return KitTr::tr("Take what is left after cut %1, turn it.").arg(step.from);
  return KitTr::tr("Take %n strip(s) from cut %1, turned.", "", step.parts).arg(step.from);
}

/// Where a sheet leaves no room to round up, the millimetres stand beside the inches: the nearest
/// mark would cut the blank too small.
QString settingText(Length setting, Unit unit) {
  const QString words = lengthText(setting, unit);
  return unit == Unit::Millimetre || ToolGrid::sixteenthInch().holds(setting)
             ? words
             : QStringLiteral("%1 (%2)").arg(words, lengthText(setting, Unit::Millimetre));
}

/// What is too narrow for the trimmer.
QString cutWithKnife(const TrimStep& step, const QString& width) {
  if (step.cuts == 1) {
    return (step.parts == 1 ? KitTr::tr("With knife and ruler %1 wide, cut")
                            : KitTr::tr("With knife and ruler %1 wide, cut each"))
        .arg(width);
  }
  return (step.parts == 1
              ? KitTr::tr("With knife and ruler %1 wide, cut %n times", "", step.cuts)
              : KitTr::tr("With knife and ruler %1 wide, cut each %n times", "", step.cuts))
      .arg(width);
}

QString setAndCut(const TrimStep& step, Unit unit) {
  const QString setting = settingText(step.setting, unit);
  if (step.knife) return cutWithKnife(step, setting);
  if (step.cuts == 1) {
    return (step.parts == 1 ? KitTr::tr("Set %1, cut") : KitTr::tr("Set %1, cut each"))
        .arg(setting);
  }
  return (step.parts == 1 ? KitTr::tr("Set %1, cut %n times", "", step.cuts)
                          : KitTr::tr("Set %1, cut each %n times", "", step.cuts))
      .arg(setting);
}

QString comesOff(const TrimStep& step, const CardPlan& card) {
  const int pieces = step.pieces * step.parts;
  const QString off = step.demand < 0 ? KitTr::tr("%n strip(s)", "", pieces)
                                      : QStringLiteral("%1 × %2").arg(pieces).arg(
                                            letter(card, static_cast<std::size_t>(step.demand)));
  if (step.restDemand < 0) return off;
  return KitTr::tr("%1; what is left is %2")
      .arg(off, letter(card, static_cast<std::size_t>(step.restDemand)));
}

/// A blank with the punch that it is for.
QString withPunch(const QString& blank, const BlankSource& source) {
  return source.punch ? KitTr::tr("%1, for the %2 punch").arg(blank, punchName(*source.punch))
                      : blank;
}

QString cutSentence(const TrimStep& step, const CardPlan& card, Unit unit) {
  const QString act = QStringLiteral("%1: %2.").arg(setAndCut(step, unit), comesOff(step, card));
  const QString take = takeUp(step);
  return take.isEmpty() ? act : take + QLatin1Char(' ') + act;
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

QString easyCostSentence(const KitPlan& plan) {
  if (!plan.isEasy()) return {};
  const FewestSheets fewest = plan.fewest();
  const bool priced =
      std::ranges::all_of(plan.cards, [](const CardPlan& card) { return card.plan.priced; });
  if (priced) {
    if (plan.cost() > fewest.cost) {
      return KitTr::tr("It costs %1 more in sheets than the cheapest plan.")
          .arg(moneyText(plan.cost() - fewest.cost));
    }
    return plan.proven ? KitTr::tr("Proven: cheaper cannot do.")
                       : KitTr::tr("The cheapest plan costs no less.");
  }
  if (plan.sheets > fewest.sheets) {
    return KitTr::tr("%n sheet(s) more than the plan of fewest sheets.", "",
                     plan.sheets - fewest.sheets);
  }
  return plan.proven ? KitTr::tr("Proven: fewer cannot do.")
                     : KitTr::tr("The plan of fewest sheets takes no fewer.");
}

bool needsKnife(const KitPlan& plan) {
  return std::ranges::any_of(
      plan.cards,
      [](const CardPlan& card) {
        return std::ranges::any_of(
            card.plan.layouts,
            [](const Layout& layout) {
              return std::ranges::any_of(trimSteps(layout), &TrimStep::knife);
            });
      });
}

QString sheetsSentence(const KitPlan& plan) {
  if (plan.isEasy()) {
    int layouts = 0;
    for (const CardPlan& card : plan.cards) layouts += static_cast<int>(card.plan.layouts.size());
    return KitTr::tr("%1 in %2, easy to cut. %3")
        .arg(KitTr::tr("%n sheet(s)", "", plan.sheets), KitTr::tr("%n layout(s)", "", layouts),
             easyCostSentence(plan));
  }
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

QString moneyText(std::int64_t price) {
  return QLocale().toString(static_cast<double>(price) / 100, 'f', 2);
}

QString oneMoreSentence(const OneMore& more) {
  if (more.price > 0) {
    return (more.proven ? KitTr::tr("One more person would cost %1 in sheets.")
                        : KitTr::tr("One more person would cost at most %1 in sheets."))
        .arg(moneyText(more.price));
  }
  if (more.sheets <= 0) return KitTr::tr("One more person would take no further sheet.");
  return more.proven
             ? KitTr::tr("One more person would take %n sheet(s) more.", "", more.sheets)
             : KitTr::tr("One more person would take at most %n sheet(s) more.", "", more.sheets);
}

QStringList leftOverLines(const KitPlan& plan) {
  QStringList lines;
  for (const CardPlan& card : plan.cards) {
    const std::vector<int> over = leftOver(card.plan, card.demands());
    for (std::size_t d = 0; d < over.size(); ++d) {
      if (over[d] > 0) {
        lines.append(
            KitTr::tr("%n of %1: %2", "", over[d]).arg(letter(card, d), blankTitle(card, d)));
      }
    }
  }
  return lines;
}

QString blankTitle(const CardPlan& card, std::size_t demand) {
  const BlankSource& source = card.sources().at(demand);
  if (source.item < 0) return text(card.demands()[demand].name);
  const QString item = itemTitle(card.kit().items.at(static_cast<std::size_t>(source.item)));
  return source.alone ? item : QStringLiteral("%1: %2").arg(item, pieceTitle(source.piece));
}

QStringList packingLines(const KitPlan& plan, Unit unit) {
  QStringList lines;
  for (const CardPlan& card : plan.cards) {
    for (std::size_t d = 0; d < card.demands().size(); ++d) {
      const QString blank = KitTr::tr("%n blank(s) %1: %2, %3", "", card.sources()[d].perSet)
                                .arg(letter(card, d), blankTitle(card, d),
                                     size(card.demands()[d].width, card.demands()[d].height, unit));
      lines.append(withPunch(blank, card.sources()[d]));
    }
  }
  return lines;
}

QStringList packingNames(const KitPlan& plan) {
  QStringList lines;
  for (const CardPlan& card : plan.cards)
    for (std::size_t d = 0; d < card.demands().size(); ++d)
      lines.append(withPunch(KitTr::tr("%n of %1: %2", "", card.sources()[d].perSet)
                                 .arg(letter(card, d), blankTitle(card, d)),
                             card.sources()[d]));
  return lines;
}

QStringList packingLetters(const KitPlan& plan) {
  QStringList letters;
  for (const CardPlan& card : plan.cards)
    for (std::size_t d = 0; d < card.demands().size(); ++d) {
      const BlankSource& source = card.sources()[d];
      QString blank = letter(card, d);
      if (source.perSet > 1) blank = QStringLiteral("%1 × %2").arg(source.perSet).arg(blank);
      if (source.punch) blank += QStringLiteral(" (%1)").arg(punchName(*source.punch));
      letters.append(blank);
    }
  return {KitTr::tr("Blanks: %1").arg(letters.join(QStringLiteral(", ")))};
}

QStringList offcutSizes(const KitPlan& plan, Unit unit) {
  QStringList lines;
  for (const CardPlan& card : plan.cards) {
    std::map<std::pair<Length, Length>, int> sizes;
    for (const Layout& layout : card.plan.layouts)
      for (const Offcut& offcut : offcutsOf(layout, kLeastOffcut))
        sizes[std::minmax(offcut.width, offcut.height)] += offcut.count * layout.count;
    for (const auto& [sides, count] : sizes) {
      lines.append(QStringLiteral("%1 × %2, %3")
                       .arg(count)
                       .arg(size(sides.first, sides.second, unit), cardName(card.card())));
    }
  }
  return lines;
}

QStringList offcutLines(const KitPlan& plan) {
  QStringList lines;
  if (!plan.findings) return lines;
  for (const OffcutUse& use : plan.findings->offcuts) {
    const QString what = extraTitle(use.extra.kind);
    const QString item = itemTitle(plan.kit().items.at(static_cast<std::size_t>(use.item)));
    const Card& card = plan.cards.at(static_cast<std::size_t>(use.card)).card();
    lines.append(
        KitTr::tr("%1 for “%2”: all %n piece(s) come out of the offcuts of %3", "", use.blanks)
            .arg(what, item, cardName(card)));
  }
  return lines;
}

LayoutWords wordLayout(int number, const Layout& layout, const CardPlan& card, Unit unit) {
  LayoutWords words;
  const StockSheet& sheet = card.sheetOf(layout);
  words.title = KitTr::tr("Layout %1: cut %n sheet(s) of %2 alike", "", layout.count)
                    .arg(number)
                    .arg(unbroken(stockName(sheet.name)));
  words.card = KitTr::tr("Card: %1").arg(cardName(card.card()));
  const std::vector<int> counts = blanksOf(layout, card.demands().size());
  for (std::size_t d = 0; d < counts.size(); ++d) {
    if (counts[d] > 0) {
      words.blanks.append(
          KitTr::tr("%n of %1: %2", "", counts[d]).arg(letter(card, d), blankTitle(card, d)));
    }
  }
  words.notes = sheetNotes(sheet, layout, card);
  for (const TrimStep& step : trimSteps(layout))
    words.cuts.push_back({step.number, cutSentence(step, card, unit)});
  for (const Offcut& offcut : offcutsOf(layout, kLeastOffcut)) {
    words.offcuts.append(KitTr::tr("%n offcut(s) of %1", "", offcut.count)
                             .arg(size(offcut.width, offcut.height, unit)));
  }
  return words;
}

}  // namespace creasewright
