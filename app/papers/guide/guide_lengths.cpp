#include "papers/guide/guide_lengths.h"

#include <QCoreApplication>
#include <QStringList>

#include "bridge/text.h"
#include "units/millimetres.h"
#include "units/tool_grid.h"

namespace creasewright {

namespace {

/// Sides in one unit, and whether any of them is rounded.
struct SizeText {
  QString words;
  bool rounded = false;
};

/// One word will say that sides are rounded, in place of a sign at each.
SizeText sizeIn(const std::vector<Length>& sides, Unit unit) {
  SizeText size;
  QStringList parts;
  for (const Length side : sides) {
    QString part = lengthText(side, unit, parts.size() + 1 == static_cast<qsizetype>(sides.size()));
    if (sides.size() > 1 && part.startsWith(QLatin1Char('~'))) {
      part.remove(0, 1);
      size.rounded = true;
    }
    parts.append(part);
  }
  size.words = parts.join(QStringLiteral(" × "));
  return size;
}

/// The same to a whole step of a ruler.
SizeText roundedIn(const std::vector<Length>& sides, Unit unit) {
  const ToolGrid steps = unit == Unit::Inch ? ToolGrid::sixteenthInch() : ToolGrid::millimetre();
  std::vector<Length> near;
  for (const Length side : sides) near.push_back(steps.nearest(side));
  return {sizeIn(near, unit).words, near != sides};
}

QString both(const QString& inches, const QString& millimetres) {
  return QCoreApplication::translate("guide", "%1 (%2)", "a size in inches and in millimetres")
      .arg(inches, millimetres);
}

QString inUnits(const std::vector<Length>& sides, GuideUnits units,
                SizeText (*sizeOf)(const std::vector<Length>&, Unit)) {
  SizeText size = sizeOf(sides, firstUnit(units));
  if (units == GuideUnits::Both) {
    const SizeText other = sizeOf(sides, Unit::Millimetre);
    size = {both(size.words, other.words), size.rounded || other.rounded};
  }
  return size.rounded ? QCoreApplication::translate("guide", "about %1", "a size").arg(size.words)
                      : size.words;
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
  return inUnits(sides, units, sizeIn);
}

QString finishedSize(const std::vector<Length>& sides, GuideUnits units) {
  return inUnits(sides, units, roundedIn);
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
