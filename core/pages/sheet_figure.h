#pragma once

#include <vector>

#include "document/build.h"
#include "drawing/drawing.h"
#include "guide/guide.h"
#include "pages/figure_room.h"

namespace creasewright {

inline constexpr double kGlueLegend = 56;  ///< mm, wide: words beside a sample of adhesive

/// The flat sheet of a piece as a step finds it, with what the step does drawn strongly.
Drawing sheetFigure(const BuiltPiece& piece, const Step& step, const FigureRoom& room);

/// The cuts of several steps of one piece in one picture, each marked with its step's number on a
/// disc beside a cut; the numbers count up from `firstNumber`.
Drawing cutMap(const BuiltPiece& piece, const std::vector<const Step*>& steps, int firstNumber,
               const FigureRoom& room);

/// Whether waste of these letters is large enough for them in every figure, also a small one.
bool lettersShow(const BuiltPiece& piece, const std::vector<std::string>& letters);

}  // namespace creasewright
