#include <algorithm>
#include <cmath>

#include "papers/kit/kit_words.h"

namespace creasewright {

namespace {

/// Twenty seconds a cut at the trimmer, to five minutes (common practice, no published source).
int cuttingMinutes(const KitPlan& plan) {
  double cuts = 0;
  for (const CardPlan& card : plan.cards) {
    for (const Layout& layout : card.plan.layouts)
      for (const TrimStep& step : trimSteps(layout))
        cuts += static_cast<double>(step.lines.size()) * layout.count;
  }
  return std::max(5, static_cast<int>(std::ceil(cuts / 3 / 5)) * 5);
}

QString clock(int minutes) {
  return QStringLiteral("%1:%2").arg(minutes / 60).arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

}  // namespace

QStringList teacherLines(const KitPlan& plan) {
  const ClassKit& kit = plan.kit();
  constexpr int kWelcome = 10;
  constexpr int kTidy = 10;
  QStringList lines;
  lines.append(KitTr::tr("The day before: cut the sheets as the layouts show, about %n minute(s).",
                         "", cuttingMinutes(plan)));
  lines.append(
      KitTr::tr("Pack %n bag(s) by the list above and put a label on each.", "", kit.sets()));
  for (const KitItem& item : kit.items) {
    if (!item.piece.empty()) continue;
    lines.append(
        KitTr::tr("Print %n copy(ies) of the guide “%1”, one of the template.", "", kit.takers)
            .arg(itemTitle(item)));
  }
  lines.append(KitTr::tr("%1 Welcome: show the finished pieces, and how blades are used safely.")
                   .arg(clock(0)));
  int now = kWelcome;
  for (std::size_t i = 0; i < kit.items.size(); ++i) {
    if (!kit.items[i].piece.empty()) continue;
    const int minutes = plan.built->minutes(i);
    lines.append(KitTr::tr("%1 “%2”: %n minute(s), step by step from the guide.", "", minutes)
                     .arg(clock(now), itemTitle(kit.items[i])));
    now += minutes;
  }
  lines.append(KitTr::tr("%1 Count the blades and tidy up.").arg(clock(now)));
  lines.append(KitTr::tr("%1 The end.").arg(clock(now + kTidy)));
  return lines;
}

}  // namespace creasewright
