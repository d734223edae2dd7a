#pragma once

#include <QRect>

class QPainter;

namespace creasewright {

/// The soft shadow round a sheet of card that lies at `sheet` (pixels). None round one so small
/// that the shadow would be larger.
void paintSheetShadow(QPainter& painter, const QRect& sheet);

}  // namespace creasewright
