#include "scene/note_box.h"

#include <algorithm>

#include "widgets/theme.h"

namespace creasewright {

void paintNote(QPainter& painter, const QString& words, QPointF at, const QRectF& room) {
  constexpr int kWidest = 280;
  constexpr int kGap = 4;  // to the rim of the room
  QRectF box = painter.boundingRect(QRectF(0, 0, kWidest, 400), Qt::TextWordWrap, words);
  box.adjust(-8, -5, 8, 5);
  box.moveTopLeft(at);
  box.moveRight(std::min(box.right(), room.right() - kGap));
  box.moveBottom(std::min(box.bottom(), room.bottom() - kGap));
  painter.setPen(QPen(theme().hairline, 1));
  painter.setBrush(theme().surface);
  painter.drawRoundedRect(box, 6, 6);
  painter.setPen(theme().ink);
  painter.drawText(box.adjusted(8, 5, -8, -5), Qt::TextWordWrap, words);
}

}  // namespace creasewright
