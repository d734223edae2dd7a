#pragma once

#include <QImage>
#include <QString>
#include <vector>

#include "document/build.h"
#include "drawing/drawing.h"

namespace creasewright {

/// What the pictures of a design show.
struct PictureOptions {
  QString piece;           ///< only this piece; empty = all, side by side
  bool folded = false;     ///< the folded box instead of the net
  bool dimensions = true;  ///< score distances and sizes around a net
};

/// Net or folded box of the chosen pieces as one drawing in true size, 10 mm apart.
Drawing pictureOf(const BuiltDesign& design, const PictureOptions& options);

/// Paints a drawing on white, 10 pixels for each mm, at most 4000 pixels wide or high.
QImage renderImage(const Drawing& drawing, const Wording& wording);

}  // namespace creasewright
