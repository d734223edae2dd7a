#pragma once

#include "drawing/drawing.h"
#include "net/flat_net.h"

namespace creasewright {

/// Room in mm that dimensions take on each side of the blank.
struct Border {
  double left = 0;
  double right = 0;
  double bottom = 0;
  double top = 0;
};

/// Adds, in blank coordinates and outside the blank: the distance of every upright score from the
/// left side along the bottom, of every level score from the bottom along the left, and the blank's
/// width above and height at the right. Labels are moved apart with leader lines so that they never
/// overlap; each carries the code `length` and takes at most 12 characters.
Border addDimensions(Drawing& drawing, const Net& net, const FlatNet& flat, double textHeight);

}  // namespace creasewright
