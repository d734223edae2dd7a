#include "scene/sheet_shadow.h"

#include <QPainter>
#include <QPainterPath>
#include <QPixmapCache>
#include <array>

#include "widgets/theme.h"

namespace creasewright {

namespace {

constexpr int kLayers = 8;
constexpr int kMargin = 10;  // pixels that the shadow reaches beyond the sheet, at most
constexpr int kCorner = 12;  // of the sheet's sides, beside which its corners are round
constexpr int kSide = 2 * kCorner + 1;

/// The shadow of the smallest sheet that has all four corners of it.
QPixmap smallShadow(qreal ratio) {
  QPixmap pixmap(QSize(kSide + 2 * kMargin, kSide + 2 * kMargin) * ratio);
  pixmap.setDevicePixelRatio(ratio);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  QColor shadow = theme().shadow;
  shadow.setAlpha(theme().dark ? 14 : 7);
  painter.setBrush(shadow);
  const QRectF sheet(kMargin, kMargin, kSide, kSide);
  for (int i = kLayers; i > 0; --i) {
    QPainterPath around;
    around.addRoundedRect(sheet.adjusted(-i * 0.5, 1, i + 0.5, i + 1.5), i, i);
    around.addRect(sheet.adjusted(1, 2, -1, -1));
    painter.drawPath(around);
  }
  return pixmap;
}

QPixmap keptShadow(qreal ratio) {
  const QString key = QStringLiteral("sheet-shadow-%1-%2").arg(theme().shadow.rgba()).arg(ratio);
  QPixmap kept;
  if (!QPixmapCache::find(key, &kept)) {
    kept = smallShadow(ratio);
    QPixmapCache::insert(key, kept);
  }
  return kept;
}

}  // namespace

/// Corners as they are, sides stretched, the middle left out: what a sheet covers is most of a
/// view, and what is painted there at every move of a hand takes its time.
void paintSheetShadow(QPainter& painter, const QRect& sheet) {
  if (sheet.width() < kSide || sheet.height() < kSide) return;
  const qreal ratio = painter.device()->devicePixelRatioF();
  const QPixmap shadow = keptShadow(ratio);
  constexpr int kEnd = kMargin + kCorner;
  constexpr std::array kFrom{0, kEnd, kEnd + 1, kSide + 2 * kMargin};
  const auto stops = [](int from, int size) {
    return std::array{from - kMargin, from + kCorner, from + size - kCorner, from + size + kMargin};
  };
  const std::array across = stops(sheet.x(), sheet.width());
  const std::array down = stops(sheet.y(), sheet.height());
  for (std::size_t row = 0; row < 3; ++row)
    for (std::size_t column = 0; column < 3; ++column) {
      if (row == 1 && column == 1) continue;
      const QRectF from(QPointF(kFrom.at(column), kFrom.at(row)) * ratio,
                        QPointF(kFrom.at(column + 1), kFrom.at(row + 1)) * ratio);
      painter.drawPixmap(QRectF(QPointF(across.at(column), down.at(row)),
                                QPointF(across.at(column + 1), down.at(row + 1))),
                         shadow, from);
    }
}

}  // namespace creasewright
