#include "bridge/text.h"

#include <QLocale>
#include <QRegularExpression>
#include <array>
#include <cstdlib>

#include "units/length_text.h"

namespace creasewright {

namespace {

LengthFormat formatFor(Unit unit, bool withUnit) {
  LengthFormat format;
  format.unit = unit;
  format.withUnit = withUnit;
  format.decimalPoint = decimalSign();
  return format;
}

QString digits(const QString& plain, const std::array<char16_t, 10>& set) {
  QString out;
  for (const QChar c : plain) out += QChar(set[static_cast<std::size_t>(c.digitValue())]);
  return out;
}

/// `2 5/16` -> `2⁵⁄₁₆`: raised numerator, fraction slash, lowered denominator.
QString withSetFractions(const QString& plain) {
  static const QRegularExpression fraction(QStringLiteral("(\\d+ )?(\\d+)/(\\d+)"));
  static constexpr std::array<char16_t, 10> kRaised{u'⁰', u'¹', u'²', u'³', u'⁴',
                                                    u'⁵', u'⁶', u'⁷', u'⁸', u'⁹'};
  static constexpr std::array<char16_t, 10> kLowered{u'₀', u'₁', u'₂', u'₃', u'₄',
                                                     u'₅', u'₆', u'₇', u'₈', u'₉'};
  const auto match = fraction.match(plain);
  if (!match.hasMatch()) return plain;
  const QString set = match.captured(1).trimmed() + digits(match.captured(2), kRaised) +
                      QChar(0x2044) + digits(match.captured(3), kLowered);
  return plain.left(match.capturedStart()) + set + plain.mid(match.capturedEnd());
}

}  // namespace

char decimalSign() { return QLocale().decimalPoint() == QLatin1String(",") ? ',' : '.'; }

QString lengthText(Length length, Unit unit, bool withUnit) {
  LengthFormat format = formatFor(unit, withUnit);
  // A thin card's measure is no nought of an inch.
  const bool vanishes = unit == Unit::Inch && withUnit && length.nm() != 0 &&
                        std::abs(length.nm()) < Length::inches(1, 32).nm();
  if (vanishes) format.unit = Unit::Millimetre;
  return withSetFractions(text(formatLength(length, format)));
}

QString limitText(Length limit, Unit unit) {
  const bool fraction = limit.nm() % Length::inches(1, 64).nm() == 0;
  LengthFormat format = formatFor(fraction ? unit : Unit::Millimetre, true);
  format.denominator = 64;
  format.decimals = 6;
  return withSetFractions(text(formatLength(limit, format)));
}

QString editableLength(Length length, Unit unit) {
  LengthFormat format = formatFor(unit, true);
  // A value off the 1/16 grid still has to survive being shown and typed again.
  format.denominator = 64;
  format.decimals = 3;
  return text(formatLength(length, format));
}

}  // namespace creasewright
