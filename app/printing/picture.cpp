#include "printing/picture.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "bridge/paint_drawing.h"
#include "bridge/text.h"
#include "drawing/arrange.h"
#include "drawing/net_drawing.h"
#include "folding/scene.h"
#include "pages/fold_drawing.h"

namespace creasewright {

namespace {

Drawing netPicture(const BuiltPiece& built, bool dimensions) {
  std::vector<Polygon> glue;
  for (const GlueArea& area : built.gluePlan) {
    glue.push_back(area.area);
  }
  NetDrawingOptions options;
  options.dimensions = dimensions;
  options.sheet = false;
  return drawNet(built.piece.net, built.flat, glue, options).drawing;
}

Drawing foldPicture(const BuiltPiece& built) {
  return drawFold(drawFolded(built.piece.net, built.folded, View{}, {0, 0, 1}));
}

}  // namespace

Drawing pictureOf(const BuiltDesign& design, const PictureOptions& options) {
  constexpr double kApart = 10;
  Drawing out;
  for (const BuiltPiece& built : design.pieces) {
    if (!options.piece.isEmpty() && text(built.piece.name) != options.piece) {
      continue;
    }
    const Drawing part =
        options.folded ? foldPicture(built) : netPicture(built, options.dimensions);
    const double at = out.width > 0 ? out.width + kApart : 0;
    append(out, moved(part, {at, 0}));
    out.width = at + part.width;
    out.height = std::max(out.height, part.height);
  }
  return out;
}

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
