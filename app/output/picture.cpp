#include "output/picture.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <utility>

#include "bridge/paint_drawing.h"
#include "pages/framed.h"

namespace creasewright {

namespace {

constexpr double kPixelsPerMm = 10;
constexpr double kUsualMost = 4000;

double usualScale(const Drawing& drawing) {
  return std::min(kPixelsPerMm, kUsualMost / std::max({drawing.width, drawing.height, 1.0}));
}

PixelSize usualPixels(const Drawing& drawing) {
  const double scale = usualScale(drawing);
  const auto pixels = [&](double mm) {
    return std::max(1, static_cast<int>(std::ceil(mm * scale)));
  };
  return {pixels(drawing.width), pixels(drawing.height)};
}

QImage render(const Drawing& drawing, const Wording& wording, PixelSize pixels, double scale,
              bool clear) {
  QImage image(pixels.width, pixels.height,
               clear ? QImage::Format_ARGB32_Premultiplied : QImage::Format_RGB32);
  image.fill(clear ? Qt::transparent : Qt::white);
  image.setDotsPerMeterX(static_cast<int>(std::lround(scale * 1000)));
  image.setDotsPerMeterY(image.dotsPerMeterX());
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  PaintOptions options;
  options.scale = scale;
  options.thinnest = 1;
  paintDrawing(painter, drawing, wording, options);
  return image;
}

}  // namespace

PixelSize pixelsFor(const Drawing& drawing, PictureSize size) {
  if (size.width <= 0) return usualPixels(drawing);
  if (size.height > 0) return {size.width, size.height};
  const double scale = size.width / std::max({drawing.width, drawing.height, 1e-9});
  const auto pixels = [&](double mm) {
    return std::clamp(static_cast<int>(std::lround(mm * scale)), 1, size.width);
  };
  return {pixels(drawing.width), pixels(drawing.height)};
}

Drawing framedFor(Drawing drawing, const PictureGround& ground,
                  const std::optional<PixelSize>& pixels) {
  const bool coloured = ground.kind == PictureGround::Kind::Coloured;
  if (drawing.width <= 0 || drawing.height <= 0 || (!coloured && !pixels)) return drawing;
  const double ratio =
      pixels ? static_cast<double>(pixels->width) / pixels->height : drawing.width / drawing.height;
  return framed(std::move(drawing), ratio, coloured ? std::optional(ground.colour) : std::nullopt);
}

QImage renderImage(const Drawing& drawing, const Wording& wording) {
  return render(drawing, wording, usualPixels(drawing), usualScale(drawing), false);
}

QImage renderImage(const Drawing& drawing, const Wording& wording, PixelSize pixels, bool clear) {
  return render(drawing, wording, pixels, pixels.width / std::max(drawing.width, 1e-9), clear);
}

}  // namespace creasewright
