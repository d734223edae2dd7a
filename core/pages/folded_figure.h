#pragma once

#include "document/build.h"
#include "guide/guide.h"
#include "pages/figure_room.h"

namespace creasewright {

/// The figure of a step at the folded piece, with arrows that show where panels go.
Drawing foldedFigure(const BuiltPiece& piece, const Step& step, const FigureRoom& room);

/// The share of a fold step's way at which its figure shows the box: most of it, or earlier where
/// card bends and stiff panels would be shown in one another.
double shownShare(const BuiltPiece& piece, const Step& step);

}  // namespace creasewright
