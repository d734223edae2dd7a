#include "bridge/fit_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "bridge/text.h"

namespace creasewright {

namespace {

struct Sum {
  Q_DECLARE_TR_FUNCTIONS(fit)
};

/// Hundredths of a millimetre or thousandths of an inch, in which the sum is shown.
struct SumUnit {
  Unit unit;

  [[nodiscard]] int decimals() const { return unit == Unit::Inch ? 3 : 2; }
  [[nodiscard]] double scale() const { return std::pow(10, decimals()); }
  [[nodiscard]] qint64 rounded(Length length) const {
    return std::llround((unit == Unit::Inch ? length.inches() : length.mm()) * scale());
  }
  [[nodiscard]] QString words(qint64 value) const {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    QString number =
        locale.toString(static_cast<double>(std::abs(value)) / scale(), 'f', decimals());
    while (number.endsWith(QLatin1Char('0'))) number.chop(1);
    if (number.endsWith(locale.decimalPoint())) number.chop(locale.decimalPoint().size());
    return number;
  }
};

void add(QString& sum, const QString& part, qint64 value) {
  if (!sum.isEmpty()) sum += value < 0 ? QStringLiteral(" − ") : QStringLiteral(" + ");
  sum += part;
}

}  // namespace

QString fitSentence(const FitReason& reason, Unit unit) {
  const SumUnit in{unit};
  const qint64 whole = in.rounded(reason.needed);
  const qint64 product = in.rounded(reason.product);
  const qint64 ease = in.rounded(reason.ease);
  const qint64 shape = in.rounded(reason.shape);
  const qint64 card = whole - product - ease - shape;  // takes up what rounding leaves
  QString sum;
  if (reason.ofProduct) add(sum, Sum::tr("product %1").arg(in.words(product)), product);
  if (ease != 0) add(sum, Sum::tr("ease %1").arg(in.words(ease)), ease);
  if (shape != 0) add(sum, Sum::tr("shape %1").arg(in.words(shape)), shape);
  if (card != 0) add(sum, Sum::tr("card %1").arg(in.words(card)), card);
  if (!sum.isEmpty()) sum[0] = sum[0].toUpper();
  const QString total =
      in.words(whole) + (unit == Unit::Inch ? QStringLiteral(" in") : QStringLiteral(" mm"));
  const QString chosen = lengthText(reason.chosen, unit);
  if (reason.floor > reason.needed)
    return Sum::tr("%1 = %2; this style needs %3.").arg(sum, total, chosen);
  if (reason.chosen == reason.needed) return Sum::tr("%1 = %2.").arg(sum, total);
  return Sum::tr("%1 = %2, rounded up to %3.").arg(sum, total, chosen);
}

}  // namespace creasewright
