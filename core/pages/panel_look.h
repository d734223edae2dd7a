#pragma once

#include "fit/card_colours.h"
#include "geometry/plane_map.h"

namespace creasewright {

/// How a panel's card looks.
struct PanelLook {
  CardColours colours = {};
  /// Where a patterned paper lies: its millimetres, x right and y up as one looks at the print, in
  /// the panel's frame.
  PlaneMap paper = {};
};

}  // namespace creasewright
