#pragma once

#include "bridge/paint_drawing.h"

namespace creasewright {

inline QColor roleColour(Role role) { return toColor(roleStyle(role).colour); }

/// The role's pen on screen at `scale` pixels per mm: never thinner than a pixel, dashes never so
/// short that their pattern is lost.
QPen screenPen(Role role, double scale);

}  // namespace creasewright
