#include <algorithm>
#include <cmath>

#include "bridge/stock_words.h"
#include "bridge/text.h"
#include "document/with_punches.h"
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

constexpr int kMostWithoutBreak = 90;  // minutes, and how long a break is (common practice, no
constexpr int kBreak = 10;             // published source)

/// The punches of all designs, each once.
QStringList punchNames(const KitPlan& plan) {
  QStringList names;
  for (const auto& item : plan.built->items)
    if (item)
      for (const Punch& punch : punchesFor(item->design)) names.append(punchName(punch));
  names.removeDuplicates();
  return names;
}

/// How many of a tool a room needs: a trimmer for the teacher, what lies on the table for two, what
/// is in the hand for each (common practice, no published source; a glue bottle for two as public
/// advice for workshops has it).
QString roomTool(ToolCode tool, const KitPlan& plan) {
  const int takers = plan.kit().takers;
  const int pairs = (takers + 1) / 2;
  switch (tool) {
    case ToolCode::Trimmer:
      return KitTr::tr("a paper trimmer for you");
    case ToolCode::ScoringBoard:
      return KitTr::tr("%n scoring board(s) with their tools", "", pairs);
    case ToolCode::Stylus:
      return KitTr::tr("%n stylus(es)", "", takers);
    case ToolCode::BoneFolder:
      return KitTr::tr("%n bone folder(s)", "", takers);
    case ToolCode::Knife:
      return KitTr::tr("%n pair(s) of scissors or craft knives", "", takers);
    case ToolCode::CuttingMat:
      return KitTr::tr("%n cutting mat(s)", "", pairs);
    case ToolCode::Punch:
      return KitTr::tr("%n set(s) of punches (%1)", "", pairs)
          .arg(punchNames(plan).join(QStringLiteral(", ")));
    case ToolCode::SafetyRuler:
      return KitTr::tr("%n safety ruler(s)", "", pairs);
  }
  return {};
}

/// All tools of all guides, in the order of a guide.
QString roomLine(const KitPlan& plan) {
  QStringList tools;
  for (const ToolCode tool :
       {ToolCode::Trimmer, ToolCode::ScoringBoard, ToolCode::Stylus, ToolCode::BoneFolder,
        ToolCode::Knife, ToolCode::CuttingMat, ToolCode::SafetyRuler, ToolCode::Punch}) {
    const bool used = std::ranges::any_of(plan.built->items, [tool](const auto& item) {
      return item && std::ranges::find(item->guide.tools, tool) != item->guide.tools.end();
    });
    if (used) tools.append(roomTool(tool, plan));
  }
  if (plan.built->gluePlaces > 0)
    tools.append(KitTr::tr("%n bottle(s) of glue", "", (plan.kit().takers + 1) / 2));
  return tools.isEmpty() ? QString()
                         : KitTr::tr("On the tables: %1.").arg(tools.join(QStringLiteral(", ")));
}

QString eachBag(const TapeNeed& need, int sets, Unit unit) {
  const Length step = unit == Unit::Inch ? Length::inches(1, 2) : Length::nanometres(10'000'000);
  const Length each = ToolGrid(step).roundUp(Length::mm(need.length.mm() / std::max(1, sets)));
  return lengthText(each, unit);
}

/// Guides for all, and how to print fewer of them.
void addCopies(const ClassKit& kit, QStringList& lines) {
  int designs = 0;
  for (const KitItem& item : kit.items) {
    if (!item.piece.empty()) continue;
    ++designs;
    lines.append(
        KitTr::tr("Print %n copy(ies) of the guide “%1”, one of the template.", "", kit.takers)
            .arg(itemTitle(item)));
  }
  if (designs > 0 && kit.takers > 1)
    lines.append(
        KitTr::tr("To save paper: one guide for two people, %n copy(ies) of each, printed "
                  "on both sides.",
                  "", (kit.takers + 1) / 2));
}

}  // namespace

QStringList bagLengths(const KitPlan& plan, Unit unit) {
  QStringList lines;
  const int sets = plan.kit().sets();
  for (const TapeNeed& need : plan.built->tapes)
    lines.append(KitTr::tr("Double-sided tape %1 wide: %2")
                     .arg(lengthText(need.width, unit), eachBag(need, sets, unit)));
  for (const TapeNeed& need : plan.built->ribbons) {
    const QString width = lengthText(need.width, unit);
    const QString each = eachBag(need, sets, unit);
    lines.append(
        need.colour ? KitTr::tr("Ribbon %1 wide, %2: %3").arg(width, colourName(*need.colour), each)
                    : KitTr::tr("Ribbon %1 wide: %2").arg(width, each));
  }
  return lines;
}

QStringList teacherLines(const KitPlan& plan, Unit unit) {
  const ClassKit& kit = plan.kit();
  constexpr int kWelcome = 10;
  constexpr int kTidy = 10;
  QStringList lines;
  lines.append(KitTr::tr("The day before: cut the sheets as the layouts show, about %n minute(s).",
                         "", cuttingMinutes(plan)));
  lines.append(
      KitTr::tr("Pack %n bag(s) by the list above and put a label on each.", "", kit.sets()));
  if (const QStringList lengths = bagLengths(plan, unit); !lengths.isEmpty())
    lines.append(KitTr::tr("For each bag cut off: %1.").arg(lengths.join(QStringLiteral("; "))));
  addCopies(kit, lines);
  if (const QString room = roomLine(plan); !room.isEmpty()) lines.append(room);
  lines.append(KitTr::tr("%1 Welcome: show the finished pieces, and how blades are used safely.")
                   .arg(clock(0)));
  int now = kWelcome;
  int worked = kWelcome;
  for (std::size_t i = 0; i < kit.items.size(); ++i) {
    if (!kit.items[i].piece.empty()) continue;
    const int minutes = plan.built->minutes(i);
    if (worked > 0 && worked + minutes > kMostWithoutBreak && now > kWelcome) {
      lines.append(KitTr::tr("%1 A break of %n minute(s).", "", kBreak).arg(clock(now)));
      now += kBreak;
      worked = 0;
    }
    lines.append(KitTr::tr("%1 “%2”: %n minute(s), step by step from the guide.", "", minutes)
                     .arg(clock(now), itemTitle(kit.items[i])));
    now += minutes;
    worked += minutes;
    if (minutes > kMostWithoutBreak)
      lines.append(KitTr::tr("With a break of %n minute(s) in its middle.", "", kBreak));
    now += minutes > kMostWithoutBreak ? kBreak : 0;
  }
  lines.append(KitTr::tr("%1 Count the blades and tidy up.").arg(clock(now)));
  lines.append(KitTr::tr("%1 The end.").arg(clock(now + kTidy)));
  return lines;
}

}  // namespace creasewright
