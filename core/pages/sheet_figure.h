#pragma once

#include "document/build.h"
#include "drawing/drawing.h"
#include "guide/guide.h"
#include "pages/figure_room.h"

namespace creasewright {

/// The flat sheet of a piece as a step finds it, with what the step does drawn strongly.
Drawing sheetFigure(const BuiltPiece& piece, const Step& step, const FigureRoom& room);

}  // namespace creasewright
