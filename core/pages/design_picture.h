#pragma once

#include <string>

#include "document/build.h"
#include "drawing/drawing.h"

namespace creasewright {

/// What the pictures of a design show.
struct PictureOptions {
  std::string piece = {};  ///< only this piece; empty = all, side by side
  bool folded = false;     ///< the folded box instead of the net
  bool dimensions = true;  ///< score distances and sizes around a net
  bool hatching = true;    ///< waste and glue of a net
};

/// Net or folded box of the chosen pieces as one drawing in true size, 10 mm apart.
Drawing pictureOf(const BuiltDesign& design, const PictureOptions& options);

}  // namespace creasewright
