#include "bridge/score_text.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "bridge/text.h"

namespace creasewright {

namespace {

struct Say {
  Q_DECLARE_TR_FUNCTIONS(score)
};

bool has(const std::vector<SheetSide>& sides, SheetSide side) {
  return std::ranges::find(sides, side) != sides.end();
}

QString direction(bool valley) { return valley ? Say::tr("valley") : Say::tr("mountain"); }

QString stopText(const ScoreReading& reading, Unit unit) {
  if (reading.toLine > 0) {
    return Say::tr("from the edge to score line %1 (%2 deep)")
        .arg(QString::number(reading.toLine), lengthText(reading.to, unit));
  }
  return Say::tr("from the edge, %1 deep").arg(lengthText(reading.to, unit));
}

}  // namespace

QString sideTitle(SheetSide side) {
  switch (side) {
    case SheetSide::Left:
      return Say::tr("left side");
    case SheetSide::Right:
      return Say::tr("right side");
    case SheetSide::Bottom:
      return Say::tr("bottom side");
    case SheetSide::Top:
      return Say::tr("top side");
  }
  return {};
}

QString sidesTitle(const std::vector<SheetSide>& sides, double width, double height) {
  const bool upright = has(sides, SheetSide::Left) && has(sides, SheetSide::Right);
  const bool level = has(sides, SheetSide::Bottom) && has(sides, SheetSide::Top);
  if (upright && level) {
    return Say::tr("all four sides");
  }
  if (sides.size() == 2 && upright && width != height) {
    return width > height ? Say::tr("both short sides") : Say::tr("both long sides");
  }
  if (sides.size() == 2 && level && width != height) {
    return width > height ? Say::tr("both long sides") : Say::tr("both short sides");
  }
  QStringList names;
  for (const SheetSide side : sides) {
    names += sideTitle(side);
  }
  return names.join(Say::tr(" and "));
}

QString readingText(const ScoreReading& reading, Unit unit) {
  const QString at = lengthText(reading.at, unit);
  if (reading.run == ScoreRun::Full) {
    return Say::tr("%1, right across, %2").arg(at, direction(reading.valley));
  }
  const QString from = sideTitle(reading.measuredFrom);
  if (reading.purpose == ScorePurpose::CutMark) {
    return Say::tr("%1 from the %2, %3, only marks where to cut")
        .arg(at, from, stopText(reading, unit));
  }
  return Say::tr("%1 from the %2, %3, %4")
      .arg(at, from, stopText(reading, unit), direction(reading.valley));
}

QString freeScoreText(const FreeScore& score, Unit unit) {
  const auto place = [unit](Point p) {
    return Say::tr("%1 from the left, %2 from the bottom")
        .arg(lengthText(Length::mm(p.x), unit), lengthText(Length::mm(p.y), unit));
  };
  return Say::tr("From %1 to %2, %3")
      .arg(place(score.line.a), place(score.line.b), direction(score.valley));
}

}  // namespace creasewright
