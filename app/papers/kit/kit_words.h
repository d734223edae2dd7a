#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include "cutting/trim_steps.h"
#include "kits/kit_plan.h"

namespace creasewright {

/// Translation context of class kits.
struct KitTr {
  Q_DECLARE_TR_FUNCTIONS(kits)
};

/// The kit's title, or a plain name.
QString kitTitle(const ClassKit& kit);
/// `12 people and 1 spare set`.
QString peopleSentence(const ClassKit& kit);
/// How many sheets, and whether fewer could do.
QString sheetsSentence(const KitPlan& plan);
/// What an easy plan costs beside the plan of fewest sheets; empty where that is what is cut.
QString easyCostSentence(const KitPlan& plan);
/// What one more person would take.
QString oneMoreSentence(const OneMore& more);
/// Whether something is cut with a knife, being too narrow for the trimmer.
bool needsKnife(const KitPlan& plan);
/// Blanks that are cut beyond what is asked for, a line for each kind.
QStringList leftOverLines(const KitPlan& plan);
/// A price as people write it.
QString moneyText(std::int64_t price);

/// What to buy and what to take from the shelf: sheets of each card, tape, ribbon, glue; last what
/// it costs, where prices are known.
QStringList shoppingLines(const KitPlan& plan, Unit unit);
/// What each box costs and is sold for, and what a seat costs; nothing for a kit without prices.
QStringList costLines(const KitPlan& plan);
/// What the teacher has ready, does and when.
QStringList teacherLines(const KitPlan& plan, Unit unit);
/// Tape and ribbon for one bag, rounded up to what is cut off a roll: 1 cm or 1/2 in.
QStringList bagLengths(const KitPlan& plan, Unit unit);
/// Name of an item: its design's title, or its style's.
QString itemTitle(const KitItem& item);
/// Name of a blank: its design's title and its piece, or its own when it is of no design.
QString blankTitle(const CardPlan& card, std::size_t demand);
/// What goes into one person's bag.
QStringList packingLines(const KitPlan& plan, Unit unit);
/// The same without sizes.
QStringList packingNames(const KitPlan& plan);
/// The same by letters alone, as one line: `Blanks: A, 2 × B, C (2 in circle)`, with what punches
/// them.
QStringList packingLetters(const KitPlan& plan);
/// Every offcut of a card that is worth keeping, by size, with how many there are.
QStringList offcutSizes(const KitPlan& plan, Unit unit);
/// What was found that could be made of the offcuts, each for itself.
QStringList offcutLines(const KitPlan& plan);

/// A layout's heading, card, notes, blanks, its cuts in order and its offcuts.
struct LayoutWords {
  QString title;
  QString card;       ///< which it is cut from, with colours and pattern
  QStringList notes;  ///< what to mind about the sheet
  QStringList blanks;
  struct Cut {
    int number;
    QString sentence;
  };
  std::vector<Cut> cuts;
  QStringList offcuts;
};
LayoutWords wordLayout(int number, const Layout& layout, const CardPlan& card, Unit unit);

}  // namespace creasewright
