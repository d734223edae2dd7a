#include "bridge/pattern_tile.h"

#include <QPainter>

#include <gtest/gtest.h>

#include "bridge/paint_drawing.h"
#include "core/patterns/seen_colours.h"

namespace creasewright {
namespace {

// Law: a brush of a paper's tile shows at each pixel what the paper's shapes show there, but at
// their rims, over many repeats and turned as the paper is.
TEST(PatternTile, ABrushShowsWhatTheShapesShow) {
  constexpr int kSize = 480;
  constexpr double kPixels = 6;  // to a millimetre
  for (const PatternKind& pattern : patterns()) {
    const PaperPattern paper = paperOf(pattern, mm(40), 30);
    const PatternTile& tile = patternTile(paper, kPixels);
    QImage image(kSize, kSize, QImage::Format_RGB32);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    QBrush brush(tile.image);
    brush.setTransform(tile.toPaper *
                       QTransform(kPixels, 0, 0, -kPixels, kSize / 2.0, kSize / 2.0));
    painter.fillRect(image.rect(), brush);
    painter.end();
    const SeenColours seen(patternOn(square(60), paper));
    int judged = 0;
    int wrong = 0;
    for (const Point p : somePoints(500, 38)) {
      const auto at = [&](double x, double y) { return seen.layerAt({p.x + x, p.y + y}); };
      constexpr double kNear = 0.3;  // mm, less than across the smallest dot
      bool plain = true;
      for (const double x : {-kNear, 0.0, kNear})
        for (const double y : {-kNear, 0.0, kNear}) plain = plain && at(x, y) == at(0, 0);
      if (!plain) continue;
      ++judged;
      const QColor shown = image.pixelColor(static_cast<int>(kSize / 2.0 + p.x * kPixels),
                                            static_cast<int>(kSize / 2.0 - p.y * kPixels));
      const QColor wanted = toColor(seen.at(p));
      wrong += std::abs(shown.red() - wanted.red()) + std::abs(shown.green() - wanted.green()) +
                   std::abs(shown.blue() - wanted.blue()) >
               12;
    }
    EXPECT_GT(judged, 40) << pattern.id;
    EXPECT_LE(wrong, judged / 100) << pattern.id;
  }
}

}  // namespace
}  // namespace creasewright
