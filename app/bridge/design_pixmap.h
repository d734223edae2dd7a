#pragma once

#include <QImage>
#include <QPixmap>

#include "document/build.h"

namespace creasewright {

/// What a small picture of a design shows.
enum class DesignView {
  Net,
  Finished,  ///< the gift as it tells most
  Ajar       ///< the gift a little open, its bottom too, so that styles are told apart
};

/// A picture as large as fits into `size`, on a clear ground.
QImage designImage(const BuiltDesign& built, DesignView view, QSize size, double devicePixelRatio);
QPixmap designPixmap(const BuiltDesign& built, DesignView view, QSize size,
                     double devicePixelRatio);

}  // namespace creasewright
