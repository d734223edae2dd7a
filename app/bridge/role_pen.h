#pragma once

#include <QColor>
#include <QPen>

#include "drawing/role.h"

namespace creasewright {

QColor roleColour(Role role);

/// The role's pen on screen at `scale` pixels per mm: never thinner than a pixel, dashes never so
/// short that their pattern is lost.
QPen screenPen(Role role, double scale);

}  // namespace creasewright
