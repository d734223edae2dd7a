#include "preview/print_filler.h"

#include <QPainter>
#include <cmath>

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

constexpr int kSize = 300;
constexpr QRgb kEmpty = 0;

QImage noise(int wide, int high, testing::Random& any) {
  QImage tile(wide, high, QImage::Format_RGB32);
  for (int y = 0; y < high; ++y)
    for (int x = 0; x < wide; ++x)
      tile.setPixel(x, y, 0xFF000000 | static_cast<QRgb>(any.whole(0, 0xFFFFFF)));
  return tile;
}

QImage clear() {
  QImage canvas(kSize, kSize, QImage::Format_ARGB32_Premultiplied);
  canvas.fill(kEmpty);
  return canvas;
}

QImage filled(const PrintFiller& filler, const PrintFiller::Face& face) {
  QImage canvas = clear();
  filler.fill(face, {canvas.bits(), canvas.bytesPerLine(), kSize}, 0, kSize);
  return canvas;
}

/// Turned, stretched and pressed, now and then seen from behind.
QTransform someTransform(testing::Random& any) {
  QTransform out;
  out.translate(any.between(0, kSize), any.between(0, kSize));
  out.rotate(any.between(0, 360));
  out.scale(any.between(0.5, 1.5), (any.whole(0, 1) == 0 ? 1 : -1) * any.between(0.3, 1.3));
  out.shear(any.between(-0.5, 0.5), 0);
  return out;
}

QPolygonF square(double from, double to) { return QRectF(from, from, to - from, to - from); }

// Against Qt's own brush under a veil, with the smooth transformation: weights are sixteenths, so
// single pixels of noise may differ by some of 255.
TEST(PrintFiller, ShowsWhatABrushShows) {
  testing::Random any(381);
  for (int i = 0; i < 60; ++i) {
    const QImage tile = noise(any.whole(5, 95), any.whole(5, 95), any);
    const QTransform place = someTransform(any);
    const int light = i % 3 == 0 ? 255 : any.whole(0, 255);
    const QImage is = filled(PrintFiller(tile), {square(20, 280), place.inverted(), light});
    QImage wanted = clear();
    QPainter painter(&wanted);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    QBrush brush(tile);
    brush.setTransform(place);
    painter.fillRect(20, 20, 260, 260, brush);
    painter.fillRect(20, 20, 260, 260, QColor(0, 0, 0, 255 - light));
    painter.end();
    double sum = 0;
    for (int y = 0; y < kSize; ++y)
      for (int x = 0; x < kSize; ++x) {
        const QColor a = is.pixelColor(x, y);
        const QColor b = wanted.pixelColor(x, y);
        ASSERT_EQ(a.alpha(), b.alpha()) << x << ' ' << y;
        const int apart = std::max({std::abs(a.red() - b.red()), std::abs(a.green() - b.green()),
                                    std::abs(a.blue() - b.blue())});
        ASSERT_LE(apart, 45) << x << ' ' << y << " of case " << i;
        sum += apart;
      }
    EXPECT_LT(sum / (260 * 260), 9) << "case " << i;
  }
}

TEST(PrintFiller, FacesThatMeetLeaveNoPixelAndShareNone) {
  testing::Random any(382);
  const PrintFiller filler(noise(20, 30, any));
  for (int i = 0; i < 60; ++i) {
    const double top = any.between(10, 290);
    const double bottom = any.between(10, 290);
    const QPolygonF left{{{10, 10}, {top, 10}, {bottom, 290}, {10, 290}}};
    const QPolygonF right{{{top, 10}, {290, 10}, {290, 290}, {bottom, 290}}};
    const QImage one = filled(filler, {left, {}, 255});
    const QImage other = filled(filler, {right, {}, 255});
    for (int y = 0; y < kSize; ++y)
      for (int x = 0; x < kSize; ++x) {
        const int times = (one.pixel(x, y) != kEmpty) + (other.pixel(x, y) != kEmpty);
        ASSERT_EQ(times, x >= 10 && x < 290 && y >= 10 && y < 290 ? 1 : 0) << x << ' ' << y;
      }
  }
}

TEST(PrintFiller, AnOpeningJoinedByADoubledEdgeStaysOpen) {
  testing::Random any(383);
  const QPolygonF outline{{{50, 50},
                           {250, 50},
                           {250, 250},
                           {50, 250},
                           {50, 50},
                           {100, 100},
                           {100, 200},
                           {200, 200},
                           {200, 100},
                           {100, 100}}};
  const QImage is = filled(PrintFiller(noise(9, 9, any)), {outline, {}, 255});
  EXPECT_NE(is.pixel(70, 150), kEmpty);
  EXPECT_NE(is.pixel(225, 150), kEmpty);
  EXPECT_EQ(is.pixel(150, 150), kEmpty);
  EXPECT_EQ(is.pixel(105, 195), kEmpty);
}

// The canvas is a part of a larger picture here, so that what goes over its edges is seen.
TEST(PrintFiller, FillsNoMoreThanItsRowsAndTheCanvasHas) {
  testing::Random any(384);
  const PrintFiller filler(noise(40, 12, any));
  const QPolygonF wide{{{-900, 130}, {150, -900}, {1200, 160}, {140, 1300}}};
  for (int i = 0; i < 20; ++i) {
    QImage larger = clear();
    const PrintFiller::Face face{wide, someTransform(any).inverted(), 255};
    filler.fill(face,
                {larger.bits() + 40 * larger.bytesPerLine() + 50 * 4, larger.bytesPerLine(), 200},
                10, 170);
    const QRect room(50, 50, 200, 160);
    for (int y = 0; y < kSize; ++y)
      for (int x = 0; x < kSize; ++x)
        ASSERT_EQ(larger.pixel(x, y) != kEmpty, room.contains(x, y)) << x << ' ' << y;
  }
}

}  // namespace
}  // namespace creasewright
