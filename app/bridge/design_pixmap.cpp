#include "bridge/design_pixmap.h"

#include <QPainter>
#include <algorithm>

#include "bridge/paint_drawing.h"
#include "pages/design_picture.h"

namespace creasewright {

QImage designImage(const BuiltDesign& built, DesignView view, QSize size, double devicePixelRatio) {
  QImage image(size * devicePixelRatio, QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(devicePixelRatio);
  image.fill(Qt::transparent);
  const bool folded = view != DesignView::Net;
  PictureOptions shown{.extra = kNoExtras,
                       .folded = folded,
                       .shadow = folded,
                       .dimensions = false,
                       .hatching = false};
  if (view == DesignView::Ajar) shown.gift = {.opening = kAjar, .bottom = true};
  if (view == DesignView::Finished) shown.gift.opening = Gift(built).telling();
  const Drawing drawing = pictureOf(built, shown);
  PaintOptions options;
  options.scale = std::min(size.width() / std::max(drawing.width, 1.0),
                           size.height() / std::max(drawing.height, 1.0));
  options.topLeft = {(size.width() - drawing.width * options.scale) / 2,
                     (size.height() - drawing.height * options.scale) / 2};
  options.thinnest = 0.8;
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  paintDrawing(painter, drawing, {}, options);
  painter.end();
  return image;
}

QPixmap designPixmap(const BuiltDesign& built, DesignView view, QSize size,
                     double devicePixelRatio) {
  return QPixmap::fromImage(designImage(built, view, size, devicePixelRatio));
}

}  // namespace creasewright
