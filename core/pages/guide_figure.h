#pragma once

#include "document/build.h"
#include "drawing/drawing.h"
#include "guide/guide.h"

namespace creasewright {

/// Room for a figure on the page, mm.
struct FigureRoom {
  double width = 80;
  double height = 80;
};

/// The figure of a step, made to fit into `room`: lines and type keep their size on paper, the
/// drawing is scaled. The sheet with the readings at the sides they are measured from, the step's
/// cuts, waste and adhesive; or the folded piece with arrows that show where panels go. `step`
/// comes from makeGuide(built).
Drawing guideFigure(const BuiltDesign& built, const Step& step, const FigureRoom& room = {});

/// All pieces folded, side by side, for the head of a guide.
Drawing finishedFigure(const BuiltDesign& built, const FigureRoom& room = {});

/// A drawing shrunk or enlarged to fit into `room`; type grows and shrinks with it.
Drawing fittedInto(Drawing drawing, const FigureRoom& room);

/// The share of a fold step's way at which its figure shows the box: most of it, or earlier where
/// card bends and stiff panels would be shown in one another.
double shownShare(const BuiltPiece& piece, const Step& step);

}  // namespace creasewright
