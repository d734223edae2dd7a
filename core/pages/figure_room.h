#pragma once

#include "drawing/drawing.h"

namespace creasewright {

/// Room for a figure on the page, mm.
struct FigureRoom {
  double width = 80;
  double height = 80;
};

/// How far a drawing of `width` x `height` mm shrinks, or grows, to fill the room.
double scaleInto(double width, double height, const FigureRoom& room);

/// A drawing shrunk or enlarged to fit into `room`; type grows and shrinks with it. Shapes of a
/// pattern lose corners that no eye finds on paper.
Drawing fittedInto(Drawing drawing, const FigureRoom& room);

}  // namespace creasewright
