#pragma once

#include <QPainter>
#include <QString>

namespace creasewright {

/// Words on a small plate with its upper left corner at `at`, moved so that it stays within `room`
/// (pixels); long lines are wrapped. In the painter's font.
void paintNote(QPainter& painter, const QString& words, QPointF at, const QRectF& room);

}  // namespace creasewright
