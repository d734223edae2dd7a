#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include "kits/plan_kit.h"
#include "kits/trim_steps.h"

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
/// What one more person would take.
QString oneMoreSentence(int sheets);

/// What to buy and what to take from the shelf: sheets of each card, tape, ribbon, glue; last what
/// it costs, where prices are known.
QStringList shoppingLines(const ClassKit& kit, const KitPlan& plan, Unit unit);
/// What the teacher does and when.
QStringList teacherLines(const ClassKit& kit, const KitPlan& plan);
/// Name of an item: its design's title, or its style's.
QString itemTitle(const KitItem& item);
/// What goes into one person's bag.
QStringList packingLines(const KitPlan& plan, Unit unit);

/// A layout's heading, its blanks, its cuts in order and its offcuts.
struct LayoutWords {
  QString title;
  QStringList blanks;
  QStringList cuts;
  QStringList offcuts;
};
LayoutWords wordLayout(int number, const Layout& layout, const CardPlan& card, const ClassKit& kit,
                       Unit unit);

}  // namespace creasewright
