#include "papers/guide/guide_lengths.h"

#include <QCoreApplication>
#include <QStringList>

#include "bridge/text.h"
#include "units/millimetres.h"
#include "units/tool_grid.h"

namespace creasewright {

namespace {

QString sizeIn(const std::vector<Length>& sides, Unit unit) {
  QStringList parts;
  for (const Length side : sides)
    parts.append(lengthText(side, unit, parts.size() + 1 == static_cast<qsizetype>(sides.size())));
  return parts.join(QStringLiteral(" × "));
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
