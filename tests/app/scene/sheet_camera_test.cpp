#include "scene/sheet_camera.h"

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

void expectSame(QPointF a, QPointF b) {
  EXPECT_NEAR(a.x(), b.x(), 1e-6);
  EXPECT_NEAR(a.y(), b.y(), 1e-6);
}

TEST(SheetCamera, TheWholeSheetIsInTheMiddleAndUpIsUp) {
  SheetCamera camera;
  camera.fit(200, 100, {10, 20, 400, 300});
  EXPECT_DOUBLE_EQ(camera.scale(), 2);
  expectSame(camera.toScreen(Point{100, 50}), {210, 170});
  expectSame(camera.toScreen(Point{0, 0}), {10, 270});
  expectSame(camera.toScreen(Point{0, 100}), {10, 70});
  camera.fit(100, 300, {0, 0, 400, 300});
  EXPECT_DOUBLE_EQ(camera.scale(), 1) << "the tighter side decides";
}

TEST(SheetCamera, NothingFitsIntoNoRoomAndNoSheetMovesIt) {
  SheetCamera camera;
  camera.fit(200, 100, {10, 20, 400, 300});
  const QPointF before = camera.toScreen(Point{3, 4});
  camera.fit(0, 100, {0, 0, 400, 300});
  camera.fit(100, 0, {0, 0, 400, 300});
  camera.fit(100, 100, {0, 0, 0, 300});
  expectSame(camera.toScreen(Point{3, 4}), before);
}

TEST(SheetCamera, ZoomKeepsThePlaceUnderThePointerAndThereAndBackIsTheSame) {
  testing::Random random(31);
  SheetCamera camera;
  camera.fit(200, 100, {10, 20, 400, 300});
  for (int i = 0; i < 200; ++i) {
    const QPointF at(random.between(0, 500), random.between(0, 400));
    const Point under = camera.toSheet(at);
    const double scale = camera.scale();
    const double factor = random.between(0.5, 2);
    camera.zoom(factor, at);
    expectSame(camera.toScreen(under), at);
    EXPECT_NEAR(camera.scale(), std::clamp(scale * factor, 0.2, 60.0), 1e-9);
    const QPointF by(random.between(-9, 9), random.between(-9, 9));
    camera.move(by);
    expectSame(camera.toScreen(under), at + by);
    camera.move(-by);
    const Point again = camera.toSheet(camera.toScreen(Point{12, 34}));
    EXPECT_NEAR(again.x, 12, 1e-9);
    EXPECT_NEAR(again.y, 34, 1e-9);
  }
}

TEST(SheetCamera, ItStaysBetweenAFifthAndSixtyPixelsAMillimetre) {
  SheetCamera camera;
  camera.zoom(1e6, {0, 0});
  EXPECT_DOUBLE_EQ(camera.scale(), 60);
  camera.zoom(1e-9, {0, 0});
  EXPECT_DOUBLE_EQ(camera.scale(), 0.2);
}

}  // namespace
}  // namespace creasewright
