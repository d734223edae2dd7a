#include "session/print_corrections.h"

#include <QSettings>
#include <QUrl>
#include <cmath>

#include "bridge/text.h"
#include "pages/print_correction.h"

namespace creasewright {

namespace {

QString keyOf(const QString& printer, const Paper& paper) {
  const QString sides =
      QStringLiteral("%1x%2").arg(paper.width.mm(), 0, 'f', 1).arg(paper.height.mm(), 0, 'f', 1);
  const QString name = printer.isEmpty() ? QStringLiteral("-")
                                         : QString::fromLatin1(QUrl::toPercentEncoding(printer));
  return QStringLiteral("printed/%1/%2").arg(name, sides);
}

}  // namespace

PrintCorrection keptCorrection(const QString& printer, const Paper& paper) {
  const QStringList kept = QSettings().value(keyOf(printer, paper)).toString().split(' ');
  if (kept.size() != 2) return {};
  const auto factor = [](const QString& written) {
    const double read = written.toDouble();
    return std::abs(read - 1) <= 2 * kMostCorrection ? read : 1.0;
  };
  return {factor(kept[0]), factor(kept[1])};
}

void keepCorrection(const QString& printer, const Paper& paper, const PrintCorrection& correction) {
  if (correction == PrintCorrection{}) return QSettings().remove(keyOf(printer, paper));
  QSettings().setValue(
      keyOf(printer, paper),
      QStringLiteral("%1 %2").arg(correction.across, 0, 'g', 12).arg(correction.down, 0, 'g', 12));
}

}  // namespace creasewright
