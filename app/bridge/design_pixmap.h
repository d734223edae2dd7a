#pragma once

#include <QImage>
#include <QPixmap>

#include "document/build.h"

namespace creasewright {

/// The pieces of a design, folded or flat, as large as fits into `size`, on a clear ground.
QImage designImage(const BuiltDesign& built, bool folded, QSize size, double devicePixelRatio);
QPixmap designPixmap(const BuiltDesign& built, bool folded, QSize size, double devicePixelRatio);

}  // namespace creasewright
