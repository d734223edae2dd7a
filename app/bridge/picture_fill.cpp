#include "bridge/picture_fill.h"

#include <QBrush>
#include <QPaintEngine>
#include <algorithm>
#include <cmath>

#include "bridge/decode_picture.h"
#include "bridge/pattern_tile.h"

namespace creasewright {

namespace {

constexpr double kMostTiles = 20'000;  // more are no picture to the eye

/// Of the picture as it is shown, for what it is shown on; a photo that is kept has no more.
int pixelsWanted(const QPainter& painter, const PlaneMap& place) {
  constexpr int kMost = 2400;
  constexpr double kPrinted = 300 / 25.4;  // to the mm
  const QTransform shown = painter.combinedTransform();
  const double largest = std::max(norm(place.x), norm(place.y));
  const bool paper = painter.device()->logicalDpiX() > 300;
  const double scale =
      paper ? kPrinted
            : std::hypot(shown.m11(), shown.m12()) * painter.device()->devicePixelRatioF();
  // In whole octaves, so that a zoom does not decode it for each of its moments.
  const double wanted = std::exp2(std::ceil(std::log2(std::max(1.0, largest * scale))));
  return static_cast<int>(std::clamp(wanted, 16.0, double{kMost}));
}

/// Pixels, y down, to the drawing's millimetres.
QTransform pixelsToDrawing(const QImage& image, const PlaneMap& place) {
  return QTransform(1.0 / image.width(), 0, 0, -1.0 / image.height(), 0, 1) * toTransform(place);
}

/// Writers of files make patterns of brushes, which viewers draw with seams: each tile is drawn.
void drawTiles(QPainter& painter, const QPainterPath& outline, const QImage& image,
               const PictureFill& picture) {
  const QTransform unit = toTransform(picture.place);
  const QRectF reach = unit.inverted().mapRect(outline.boundingRect());
  if (picture.tiled && reach.width() * reach.height() > kMostTiles) return;
  painter.save();
  painter.setClipPath(outline, Qt::IntersectClip);
  painter.setTransform(pixelsToDrawing(image, picture.place), true);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  const auto draw = [&](double column, double row) {
    painter.drawImage(QPointF(column * image.width(), -row * image.height()), image);
  };
  if (!picture.tiled)
    draw(0, 0);
  else
    for (double row = std::floor(reach.top()); row < reach.bottom(); ++row)
      for (double column = std::floor(reach.left()); column < reach.right(); ++column)
        draw(column, row);
  painter.restore();
}

}  // namespace

void paintFill(QPainter& painter, const QPainterPath& outline, const PictureFill& picture,
               bool grey) {
  constexpr double kFlat = 1e-6;  // mm2: seen from its edge
  if (!(std::abs(picture.place.factor()) > kFlat)) return;
  QImage image = keptPicture(picture.file, pixelsWanted(painter, picture.place));
  if (image.isNull()) return;
  if (grey) image = image.convertToFormat(QImage::Format_Grayscale8);
  const QPaintEngine* engine = painter.paintEngine();
  if (engine != nullptr && engine->type() == QPaintEngine::Pdf) {
    drawTiles(painter, outline, image, picture);
    return;
  }
  QBrush brush(image);
  brush.setTransform(pixelsToDrawing(image, picture.place));
  painter.save();
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  QPainterPath area = outline;
  if (!picture.tiled) {
    QPainterPath once;
    once.addPolygon(toTransform(picture.place).map(QPolygonF(QRectF(0, 0, 1, 1))));
    area = area.intersected(once);
  }
  painter.fillPath(area, brush);
  painter.restore();
}

}  // namespace creasewright
