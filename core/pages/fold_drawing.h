#pragma once

#include "drawing/drawing.h"
#include "folding/surfaces/scene.h"

namespace creasewright {

/// What a facet belongs to, for its colour.
Surface surfaceOf(const Facet& facet);

/// A folded picture as a drawing with `margin` mm around it: lit faces, then visible edges.
Drawing drawFold(const FoldPicture& picture, double margin = 4);

}  // namespace creasewright
