#pragma once

#include <QPainter>
#include <optional>

#include "making/score_plan.h"
#include "scene/sheet_camera.h"
#include "units/length.h"

namespace creasewright {

constexpr int kRulerThickness = 26;  ///< pixels

/// A ruler along one border of the view. Each one starts at another corner of the sheet (left at
/// the top, right at the bottom, bottom at the left, top at the right), as a board measures from
/// any side.
struct Ruler {
  SheetSide border = SheetSide::Top;  ///< of the view
  QRectF area;
  double sheetWidth = 0;  ///< mm
  double sheetHeight = 0;
};

/// Draws the ruler with marks as fine as the scale allows, and a pointer at `mouse` when inside.
void paintRuler(QPainter& painter, const Ruler& ruler, const SheetCamera& camera, Unit unit,
                std::optional<QPointF> mouse);

}  // namespace creasewright
