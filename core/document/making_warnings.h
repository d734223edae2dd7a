#pragma once

#include <span>

#include "document/build.h"
#include "units/paper.h"

namespace creasewright {

/// What can be made but asks for care: folds closer than 4 mm or ten thicknesses of the card
/// (FoldsClose), card over 0.6 mm that is only scored (CardThick), a blank larger than the design's
/// scoring board (BlankOverBoard), a product of a size that its own style is not kept for
/// (ProductOutsideStyle), what printWarnings and coveredWords tell. Of a blank sheet also what it
/// lacks to become a box (SheetBare, EdgesNotHeld).
Problems makingWarnings(const BuiltDesign& built);

/// Blanks larger than every sheet at hand (BlankOverSheets); with no sheets there is nothing to
/// say.
Problems sheetWarnings(const BuiltDesign& built, std::span<const Paper> sheets);

}  // namespace creasewright
