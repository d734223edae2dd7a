#pragma once

#include "drawing/drawing.h"

namespace creasewright {

/// A drawing as a printer without colours shows it well: dark lines and words black, all else the
/// grey that is as light to the eye. Colours of patterns that are alike in light are moved apart,
/// so that no pattern vanishes. Photographs (Drawing::pictures) are left to whoever paints them.
Drawing inBlack(Drawing drawing);

}  // namespace creasewright
