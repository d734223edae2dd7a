#pragma once

#include "document/build.h"
#include "drawing/drawing.h"
#include "pages/figure_room.h"

namespace creasewright {

/// Several plain sheets side by side at one scale, each with its letter, a, b, c ..; `pieces` are
/// indices into BuiltDesign::pieces.
Drawing sheetsFigure(const BuiltDesign& built, const std::vector<int>& pieces,
                     const FigureRoom& room);

}  // namespace creasewright
