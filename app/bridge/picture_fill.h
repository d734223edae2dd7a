#pragma once

#include <QPainter>
#include <QPainterPath>

#include "drawing/drawing.h"

namespace creasewright {

/// Paints a picture within an outline; both in the drawing's millimetres, under the painter's
/// transform. What cannot be decoded is left out. `grey`: as a printer without colours shows it.
void paintFill(QPainter& painter, const QPainterPath& outline, const PictureFill& picture,
               bool grey = false);

}  // namespace creasewright
