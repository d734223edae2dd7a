#pragma once

#include <QPointF>
#include <QPolygonF>
#include <QRectF>

#include "geometry/polygon.h"

namespace creasewright {

/// Where the sheet lies on screen: blank coordinates (mm, y up) to pixels (y down) and back.
class SheetCamera {
 public:
  [[nodiscard]] QPointF toScreen(Point p) const;
  [[nodiscard]] Point toSheet(QPointF pixel) const;
  [[nodiscard]] QPolygonF toScreen(const Polygon& polygon) const;
  [[nodiscard]] double scale() const { return scale_; }  ///< pixels per mm

  void move(QPointF byPixels) { origin_ += byPixels; }
  /// Zooms by `factor`; the place under `pixel` stays there. Between 0.2 and 60 pixels per mm.
  void zoom(double factor, QPointF pixel);
  /// Shows the whole sheet of `width` x `height` mm in the middle of `room`.
  void fit(double width, double height, const QRectF& room);

 private:
  double scale_ = 2;
  QPointF origin_;  // of the blank's lower left corner
};

}  // namespace creasewright
