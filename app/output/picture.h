#pragma once

#include <QImage>

#include "drawing/drawing.h"

namespace creasewright {

/// Paints a drawing on white, 10 pixels for each mm, at most 4000 pixels wide or high.
QImage renderImage(const Drawing& drawing, const Wording& wording);

}  // namespace creasewright
