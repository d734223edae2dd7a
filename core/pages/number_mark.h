#pragma once

#include "drawing/drawing.h"

namespace creasewright {

/// A number in white on a filled disc: the same sign for a step in its text and in pictures.
void addNumberMark(Drawing& drawing, int number, Point centre, double radius);

/// A number in a thin ring: the n-th score line from an edge.
void addLineNumber(Drawing& drawing, int number, Point centre, double radius);

/// A letter on a white disc with a thin ring: a panel that the words call so.
void addPanelLetter(Drawing& drawing, char letter, Point centre, double radius);

}  // namespace creasewright
