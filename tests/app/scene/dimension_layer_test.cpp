#include "scene/dimension_layer.h"

#include <QFont>

#include <gtest/gtest.h>

#include "session/design_session.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

QFontMetricsF metrics() {
  QFont font;
  font.setPixelSize(12);
  return QFontMetricsF(font);
}

TEST(DimensionLayer, NoTwoLabelsOverlapAtAnyZoomInAnyStyle) {
  for (const Style& style : styles()) {
    const Design now = freshDesign();
    const auto design = newDesign(style.id, now.product, now.card, now.ease, now.grid);
    ASSERT_TRUE(design);
    const auto built = build(*design);
    ASSERT_TRUE(built);
    for (const double size : {200.0, 500.0, 2000.0}) {
      for (const Unit unit : {Unit::Millimetre, Unit::Inch}) {
        SheetCamera camera;
        const BuiltPiece& piece = built->pieces.front();
        camera.fit(piece.flat.width, piece.flat.height, {0, 0, size, size});
        const auto labels = layDimensions(piece, camera, unit, metrics());
        ASSERT_GE(labels.size(), piece.net.creases.empty() ? 2U : 3U);
        for (std::size_t i = 0; i < labels.size(); ++i) {
          for (std::size_t k = i + 1; k < labels.size(); ++k) {
            const QRectF both = labels[i].area().intersected(labels[k].area());
            EXPECT_LT(std::min(both.width(), both.height()), 0.5)
                << style.id << ' ' << labels[i].words.toStdString() << " on "
                << labels[k].words.toStdString();
          }
        }
      }
    }
  }
}

TEST(SheetCamera, ZoomKeepsThePlaceUnderTheMouse) {
  SheetCamera camera;
  camera.fit(200, 100, {0, 0, 800, 600});
  const QPointF mouse(123, 456);
  const Point before = camera.toSheet(mouse);
  camera.zoom(1.7, mouse);
  EXPECT_LT(distance(before, camera.toSheet(mouse)), 1e-9);
}

}  // namespace
}  // namespace creasewright
