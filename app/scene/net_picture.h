#pragma once

#include <QPainter>

#include "document/build.h"
#include "scene/sheet_camera.h"
#include "session/place.h"

namespace creasewright {

/// The blank lying on the bench with a soft shadow, in the colours of its card, pale where lines
/// want it; waste hatched.
void paintSheet(QPainter& painter, const BuiltDesign& built, const BuiltPiece& piece,
                const SheetCamera& camera);

/// Cuts, scores and glue areas of the net, and a halo on what is lit: its lines, else its panels.
void paintNet(QPainter& painter, const BuiltPiece& piece, const SheetCamera& camera,
              const Place& lit);

/// Index of the panel at `at` (blank coordinates), or -1.
int panelAt(const BuiltPiece& piece, Point at);

}  // namespace creasewright
