#include "preview/paint_shadow.h"

#include <QPainter>
#include <cmath>

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

GroundShadow someShadow() {
  testing::Random any(385);
  GroundShadow shadow{{{-30, -10}, {50, 30}}, {}, 16, 8, {}};
  for (int i = 0; i < 16 * 8; ++i)
    shadow.dark.push_back(static_cast<std::uint8_t>(any.whole(0, 76)));
  return shadow;
}

/// Five pixels to a millimetre, y up, the shadow's corner at (40, 30).
const QTransform kPlace(5, 0, 0, -5, 40 + 150, 30 + 150);

QImage painted(const GroundShadow& shadow, double ratio) {
  QImage canvas(QSize(500, 260) * ratio, QImage::Format_ARGB32_Premultiplied);
  canvas.setDevicePixelRatio(ratio);
  canvas.fill(Qt::transparent);
  paintShadow(canvas, shadow, kPlace);
  return canvas;
}

TEST(PaintShadow, IsAsDarkAsTheShadowInTheMiddleOfItsCells) {
  const GroundShadow shadow = someShadow();
  for (const int ratio : {1, 2}) {
    const QImage canvas = painted(shadow, ratio);
    for (int row = 0; row < shadow.rows; ++row)
      for (int column = 0; column < shadow.columns; ++column) {
        const QRgb is = canvas.pixel(ratio * (40 + 25 * column + 12), ratio * (30 + 25 * row + 12));
        EXPECT_NEAR(qAlpha(is), shadow.dark[static_cast<std::size_t>(row * 16 + column)], 4)
            << row << ' ' << column;
        EXPECT_EQ(qRed(is) + qGreen(is) + qBlue(is), 0);
      }
  }
}

TEST(PaintShadow, IsSmoothInsideAndNothingOutside) {
  const GroundShadow shadow = someShadow();
  const QImage canvas = painted(shadow, 1);
  const QRect room(40, 30, 400, 200);
  for (int y = 0; y < canvas.height(); ++y)
    for (int x = 0; x < canvas.width(); ++x) {
      if (!room.contains(x, y)) {
        ASSERT_EQ(canvas.pixel(x, y), 0U) << x << ' ' << y;
      } else if (room.contains(x + 1, y)) {
        // From one cell to the next in 25 steps.
        ASSERT_LE(std::abs(qAlpha(canvas.pixel(x, y)) - qAlpha(canvas.pixel(x + 1, y))),
                  77 / 25 + 2);
      }
    }
}

TEST(PaintShadow, OfNothingOrOffTheCanvasPaintsNothing) {
  EXPECT_EQ(painted({}, 1), painted({{{0, 0}, {1, 1}}, {}, 0, 0, {}}, 1));
  GroundShadow far = someShadow();
  far.extent = {{-3000, 0}, {-2900, 40}};
  EXPECT_EQ(painted(far, 1), painted({}, 1));
}

}  // namespace
}  // namespace creasewright
