#include "widgets/swatch.h"

#include <QPainter>
#include <QPixmap>

#include "widgets/theme.h"

namespace creasewright {

QIcon swatchIcon(int side, double devicePixelRatio, const std::optional<QBrush>& fill, int gap) {
  QPixmap picture(QSize(side + gap, side) * devicePixelRatio);
  picture.setDevicePixelRatio(devicePixelRatio);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
  painter.setPen(theme().quietInk);
  painter.setBrush(fill.value_or(QBrush(Qt::NoBrush)));
  painter.drawRoundedRect(QRectF(0.5, 0.5, side - 1, side - 1), 3, 3);
  const int inset = side * 3 / 16;
  if (!fill) painter.drawLine(QPointF(inset, side - inset), QPointF(side - inset, inset));
  return QIcon(picture);
}

}  // namespace creasewright
