#pragma once

#include <QImage>
#include <QTransform>

#include "folding/surfaces/ground_shadow.h"

namespace creasewright {

/// Puts the shadow onto a clear canvas (32 bits to a pixel, premultiplied, with the screen's device
/// pixel ratio); `place`: picture coordinates to pixels of the screen.
void paintShadow(QImage& canvas, const GroundShadow& shadow, const QTransform& place);

}  // namespace creasewright
