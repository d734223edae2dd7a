#include "papers/guide/guide_lengths.h"

#include <QCoreApplication>
#include <QStringList>

#include "bridge/text.h"
#include "units/millimetres.h"
#include "units/tool_grid.h"

namespace creasewright {

namespace {

/// One word for all sides that are rounded, in place of a sign at each.
QString sizeIn(const std::vector<Length>& sides, Unit unit) {
  QStringList parts;
  bool rounded = false;
  for (const Length side : sides) {
    QString part = lengthText(side, unit, parts.size() + 1 == static_cast<qsizetype>(sides.size()));
    if (sides.size() > 1 && part.startsWith(QLatin1Char('~'))) {
      part.remove(0, 1);
      rounded = true;
    }
    parts.append(part);
  }
  const QString size = parts.join(QStringLiteral(" × "));
  return rounded ? QCoreApplication::translate("guide", "about %1", "a size").arg(size) : size;
}

/// The same to a whole step of a ruler.
QString roundedIn(const std::vector<Length>& sides, Unit unit) {
  const ToolGrid steps = unit == Unit::Inch ? ToolGrid::sixteenthInch() : ToolGrid::millimetre();
  QStringList parts;
  bool rounded = false;
  for (const Length side : sides) {
    const Length near = steps.nearest(side);
    rounded = rounded || near != side;
    parts.append(lengthText(near, unit, parts.size() + 1 == static_cast<qsizetype>(sides.size())));
  }
  const QString size = parts.join(QStringLiteral(" × "));
  return rounded ? QCoreApplication::translate("guide", "about %1", "a size").arg(size) : size;
}

QString both(const QString& inches, const QString& millimetres) {
  return QCoreApplication::translate("guide", "%1 (%2)", "a size in inches and in millimetres")
      .arg(inches, millimetres);
}

}  // namespace

Unit firstUnit(GuideUnits units) {
  return units == GuideUnits::Millimetre ? Unit::Millimetre : Unit::Inch;
}

std::vector<Unit> unitsOf(GuideUnits units) {
  if (units == GuideUnits::Both) return {Unit::Inch, Unit::Millimetre};
  return {firstUnit(units)};
}

QString guideSize(const std::vector<Length>& sides, GuideUnits units) {
  const QString first = sizeIn(sides, firstUnit(units));
  if (units != GuideUnits::Both) return first;
  return both(first, sizeIn(sides, Unit::Millimetre));
}

QString finishedSize(const std::vector<Length>& sides, GuideUnits units) {
  const QString first = roundedIn(sides, firstUnit(units));
  if (units != GuideUnits::Both) return first;
  return both(first, roundedIn(sides, Unit::Millimetre));
}

QString tapeLength(Length length, GuideUnits units) {
  const auto in = [length](Unit unit) {
    const ToolGrid steps(unit == Unit::Inch ? Length::inches(1, 8) : mm(1));
    return lengthText(steps.roundUp(length), unit);
  };
  if (units != GuideUnits::Both) return in(firstUnit(units));
  return both(in(Unit::Inch), in(Unit::Millimetre));
}

QString keepAwayWords(GuideUnits units) {
  const char* words = units == GuideUnits::Inch   ? QT_TRANSLATE_NOOP("guide", "1/32 in")
                      : units == GuideUnits::Both ? QT_TRANSLATE_NOOP("guide", "1/32 in (1 mm)")
                                                  : QT_TRANSLATE_NOOP("guide", "1 mm");
  return QCoreApplication::translate("guide", words, "how far adhesive stays from edges");
}

QString guideLength(Length length, GuideUnits units) { return guideSize({length}, units); }

}  // namespace creasewright
