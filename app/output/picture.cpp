#include "output/picture.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "bridge/paint_drawing.h"

namespace creasewright {

QImage renderImage(const Drawing& drawing, const Wording& wording) {
  constexpr double kPixelsPerMm = 10;
  constexpr double kMostPixels = 4000;
  const double longest = std::max({drawing.width, drawing.height, 1.0});
  PaintOptions options;
  options.scale = std::min(kPixelsPerMm, kMostPixels / longest);
  options.thinnest = 1;
  const auto pixels = [&](double mm) {
    return std::max(1, static_cast<int>(std::ceil(mm * options.scale)));
  };
  QImage image(pixels(drawing.width), pixels(drawing.height), QImage::Format_RGB32);
  image.fill(Qt::white);
  image.setDotsPerMeterX(static_cast<int>(std::lround(options.scale * 1000)));
  image.setDotsPerMeterY(image.dotsPerMeterX());
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  paintDrawing(painter, drawing, wording, options);
  return image;
}

}  // namespace creasewright
