#pragma once

#include <QPainter>
#include <QString>
#include <functional>
#include <vector>

#include "document/build.h"
#include "scene/sheet_camera.h"

namespace creasewright {

/// One distance beside the sheet: a leader and a label, in pixels.
struct DimensionLabel {
  QString words;
  QPolygonF leader;
  QRectF box;            ///< of the upright text before turning
  bool turned = false;   ///< reads from bottom to top
  bool ofScore = false;  ///< else of the blank
  double mm = 0;         ///< of a score: from the left (turned) or the bottom
  /// The place the label takes on screen.
  [[nodiscard]] QRectF area() const;
};

/// Labels for the scores (from the left along the bottom, from the bottom along the left side) and
/// for the blank's size. No two of them overlap at any zoom.
std::vector<DimensionLabel> layDimensions(const BuiltPiece& piece, const SheetCamera& camera,
                                          Unit unit, const QFontMetricsF& metrics);

/// Room in pixels the labels want on the left and below.
double dimensionRoom(const QFontMetricsF& metrics);

/// `isLit` says which labels are tinted.
void paintDimensions(QPainter& painter, const std::vector<DimensionLabel>& labels,
                     const std::function<bool(const DimensionLabel&)>& isLit);

}  // namespace creasewright
