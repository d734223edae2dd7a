#include "preview/fold_view.h"

#include <QImage>
#include <QPointingDevice>
#include <QTest>
#include <QWheelEvent>
#include <memory>

#include <gtest/gtest.h>

#include "commands/edits.h"

namespace creasewright {
namespace {

class FoldViewTest : public ::testing::Test {
 protected:
  FoldViewTest() {
    view_.resize(420, 320);
    view_.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&view_));
  }
  QImage picture() { return view_.grab().toImage(); }
  [[nodiscard]] double turn() const { return view_.view().turn.degrees(); }
  [[nodiscard]] double tilt() const { return view_.view().tilt.degrees(); }
  void wheel(int notches) {
    QWheelEvent event({200, 150}, view_.mapToGlobal(QPointF(200, 150)), {}, {0, 120 * notches},
                      Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(&view_, &event);
  }
  /// Width in pixels of what is painted in ink: a shadow is never so dark.
  int inkedWidth() {
    const QImage shown = picture();
    constexpr int kInk = 140;
    int low = shown.width();
    int high = 0;
    for (int y = 0; y < shown.height(); ++y)
      for (int x = 0; x < shown.width(); ++x)
        if (qGray(shown.pixel(x, y)) < kInk) low = std::min(low, x), high = std::max(high, x);
    return high - low;
  }

  DesignSession session_;
  FoldView view_{session_};
};

TEST_F(FoldViewTest, DraggingTurnsItAsFarAsTheMouseGoes) {
  const double turn0 = turn();
  const double tilt0 = tilt();
  QTest::mousePress(&view_, Qt::LeftButton, {}, {100, 100});
  QTest::mouseMove(&view_, {140, 90});
  QTest::mouseRelease(&view_, Qt::LeftButton, {}, {140, 90});
  EXPECT_NEAR(std::remainder(turn() - turn0 - 20, 360), 0, 1e-9) << "half a degree a pixel";
  EXPECT_NEAR(tilt() - tilt0, -5, 1e-9);
}

TEST_F(FoldViewTest, NeitherThePictureNorItsShadowIsCutOff) {
  for (const QSize& size : {QSize(420, 320), QSize(260, 420)})
    for (int i = 0; i < 90; ++i) {
      view_.resize(size);
      QTest::keyClick(&view_, i % 4 != 3 ? Qt::Key_Right : i < 45 ? Qt::Key_Up : Qt::Key_Down);
      const QImage shown = picture();
      const QRect room = shown.rect().adjusted(0, 0, -1, -1);
      int farthest = 0;
      const auto look = [&](int x, int y) {
        farthest =
            std::max(farthest, std::abs(qGray(shown.pixel(x, y)) - qGray(shown.pixel(0, 0))));
      };
      for (int x = 0; x <= room.right(); ++x) look(x, 0), look(x, room.bottom());
      for (int y = 0; y <= room.bottom(); ++y) look(0, y), look(room.right(), y);
      EXPECT_LE(farthest, 8) << "turn " << turn() << " tilt " << tilt();
    }
}

TEST_F(FoldViewTest, ArrowKeysTurnByFiveDegreesAndHomeGoesBack) {
  const double turn0 = turn();
  const double tilt0 = tilt();
  QTest::keyClick(&view_, Qt::Key_Right);
  EXPECT_NEAR(std::remainder(turn() - turn0 - 5, 360), 0, 1e-9);
  QTest::keyClick(&view_, Qt::Key_Left);
  QTest::keyClick(&view_, Qt::Key_Left);
  EXPECT_NEAR(std::remainder(turn() - turn0 + 5, 360), 0, 1e-9);
  QTest::keyClick(&view_, Qt::Key_Up);
  EXPECT_NEAR(tilt() - tilt0, 5, 1e-9);
  QTest::keyClick(&view_, Qt::Key_Down);
  QTest::keyClick(&view_, Qt::Key_Down);
  EXPECT_NEAR(tilt() - tilt0, -5, 1e-9);
  const QImage turned = picture();
  QTest::keyClick(&view_, Qt::Key_Home);
  EXPECT_EQ(turn(), turn0);
  EXPECT_EQ(tilt(), tilt0);
  EXPECT_NE(picture(), turned);
}

TEST_F(FoldViewTest, KeysLookFromTheFrontFromAboveAndThreeQuarter) {
  const View standard = view_.view();
  view_.setFocus();
  QTest::keyClick(&view_, Qt::Key_1);
  EXPECT_EQ(turn(), 0);
  EXPECT_EQ(tilt(), 0);
  const int front = inkedWidth();
  QTest::keyClick(&view_, Qt::Key_2);
  EXPECT_EQ(turn(), 0);
  EXPECT_GT(tilt(), 80);
  EXPECT_NEAR(inkedWidth(), front, 4) << "as wide from above";
  QTest::keyClick(&view_, Qt::Key_3);
  EXPECT_EQ(turn(), standard.turn.degrees());
  EXPECT_EQ(tilt(), standard.tilt.degrees());
  EXPECT_EQ(view_.actions().size(), 3 + 1 + 3) << "views, a line, openings";
}

TEST_F(FoldViewTest, ItNeverTipsOverAndComesRoundInAFullTurn) {
  const double turn0 = turn();
  for (int i = 0; i < 72; ++i) QTest::keyClick(&view_, Qt::Key_Right);
  EXPECT_NEAR(std::remainder(turn() - turn0, 360), 0, 1e-6);
  EXPECT_LE(std::abs(turn()), 180);
  for (int i = 0; i < 60; ++i) QTest::keyClick(&view_, Qt::Key_Up);
  EXPECT_EQ(tilt(), 89);
  for (int i = 0; i < 60; ++i) QTest::keyClick(&view_, Qt::Key_Down);
  EXPECT_EQ(tilt(), -89);
}

TEST_F(FoldViewTest, TheWheelComesCloserAndGoesAway) {
  const int width = inkedWidth();
  wheel(-2);
  EXPECT_NEAR(inkedWidth(), width / (1.15 * 1.15), 4);
  wheel(2);
  EXPECT_NEAR(inkedWidth(), width, 2);
  wheel(-40);
  EXPECT_NEAR(inkedWidth(), width * 0.3, 4) << "and stays in sight";
}

class TouchedFoldViewTest : public FoldViewTest {
 protected:
  QTest::QTouchEventWidgetSequence touch() { return QTest::touchEvent(&view_, screen_.get()); }
  /// A mouse event such as systems make of touches.
  void synthesized(QEvent::Type type, QPoint at) {
    const QPointF here(at);
    QMouseEvent event(type, here, here, view_.mapToGlobal(here), Qt::LeftButton, Qt::LeftButton,
                      Qt::NoModifier, Qt::MouseEventSynthesizedBySystem);
    QApplication::sendEvent(&view_, &event);
  }

 private:
  std::unique_ptr<QPointingDevice> screen_{QTest::createTouchDevice()};
};

TEST_F(TouchedFoldViewTest, OneFingerTurnsItAsTheMouseDoes) {
  const double turn0 = turn();
  const double tilt0 = tilt();
  touch().press(0, {100, 100}, &view_);
  touch().move(0, {160, 100}, &view_);
  touch().move(0, {160, 80}, &view_);
  EXPECT_NEAR(std::remainder(turn() - turn0 - 30, 360), 0, 1e-9) << "half a degree a pixel";
  EXPECT_NEAR(tilt() - tilt0, -10, 1e-9);
  synthesized(QEvent::MouseButtonPress, {100, 100});
  synthesized(QEvent::MouseMove, {200, 100});
  synthesized(QEvent::MouseButtonRelease, {200, 100});
  EXPECT_NEAR(std::remainder(turn() - turn0 - 30, 360), 0, 1e-9) << "told once";
  touch().release(0, {160, 80}, &view_);
  EXPECT_TRUE(session_.selection().lit().isEmpty()) << "no tap";
}

TEST_F(TouchedFoldViewTest, TwoFingersComeCloserAndTurnNothing) {
  const View before = view_.view();
  const int width = inkedWidth();
  touch().press(0, {200, 160}, &view_).press(1, {240, 160}, &view_);
  touch().move(0, {210, 160}, &view_).move(1, {230, 160}, &view_);
  EXPECT_NEAR(inkedWidth(), width / 2.0, 4) << "half as far apart";
  touch().move(0, {200, 160}, &view_).move(1, {240, 160}, &view_);
  EXPECT_NEAR(inkedWidth(), width, 3);
  touch().release(1, {240, 160}, &view_).stationary(0);
  touch().release(0, {200, 160}, &view_);
  EXPECT_EQ(view_.view().turn.degrees(), before.turn.degrees());
  EXPECT_EQ(view_.view().tilt.degrees(), before.tilt.degrees());
  EXPECT_TRUE(session_.selection().lit().isEmpty());
}

TEST_F(TouchedFoldViewTest, ATapKeepsWhatAClickKeeps) {
  QPoint middle = view_.rect().center();
  for (; session_.selection().lit().isEmpty() && middle.y() < view_.height(); middle.ry() += 10)
    QTest::mouseClick(&view_, Qt::LeftButton, {}, middle);
  middle.ry() -= 10;
  const Place clicked = session_.selection().lit();
  ASSERT_FALSE(clicked.isEmpty());
  session_.selection().clear();
  const QImage before = picture();
  touch().press(0, middle, &view_);
  touch().move(0, middle + QPoint(2, 1), &view_);
  touch().release(0, middle + QPoint(2, 1), &view_);
  EXPECT_EQ(session_.selection().lit(), clicked);
  session_.selection().clear();
  EXPECT_EQ(picture(), before) << "a finger that wobbles turns nothing";
}

TEST_F(FoldViewTest, StopsAreBetweenFlatAndFinished) {
  const QImage folded = picture();
  view_.setDone(view_.strip().end());
  EXPECT_EQ(picture(), folded);
  view_.setDone(-1);
  EXPECT_EQ(view_.done(), 0);
  EXPECT_NE(picture(), folded);
}

TEST_F(FoldViewTest, LitPanelsAreTintedAndNumbersThatDoNotHoldAreFaint) {
  const QImage plain = picture();
  session_.selection().keep({.panels = {QStringLiteral("base")}});
  const QImage lit = picture();
  EXPECT_NE(lit, plain);
  session_.selection().clear();
  EXPECT_EQ(picture(), plain);
  changeParameter(session_, "depth", 1);
  ASSERT_FALSE(session_.isCurrent());
  const QImage faint = picture();
  EXPECT_NE(faint, plain);
  int darkest = 255;
  int faintest = 255;
  for (int y = 0; y < plain.height(); ++y)
    for (int x = 0; x < plain.width(); ++x) {
      darkest = std::min(darkest, qGray(plain.pixel(x, y)));
      faintest = std::min(faintest, qGray(faint.pixel(x, y)));
    }
  EXPECT_GT(faintest, darkest + 20);
}

}  // namespace
}  // namespace creasewright
