#pragma once

#include <QPixmap>

#include "document/build.h"

namespace creasewright {

/// The folded piece of a design, small, on a clear ground. Empty when it cannot be built.
QPixmap foldedPicture(const Design& design, QSize size, double devicePixelRatio);

}  // namespace creasewright
