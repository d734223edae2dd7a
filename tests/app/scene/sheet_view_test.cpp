#include "scene/sheet_view.h"

#include <QTest>
#include <QWheelEvent>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "scene/net_picture.h"
#include "styles/registry.h"
#include "support/deep_point.h"

namespace creasewright {
namespace {

class SheetViewTest : public ::testing::Test {
 protected:
  SheetViewTest() {
    view_.resize(700, 600);
    view_.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&view_));
  }
  [[nodiscard]] QPointF corner() const { return view_.camera().toScreen(Point{0, 0}); }

  DesignSession session_;
  SheetView view_{session_};
};

TEST_F(SheetViewTest, EveryPanelOfEveryStyleIsFoundUnderItsOwnPlace) {
  for (const Style& style : styles()) {
    changeStyle(session_, style.id);
    for (const BuiltPiece& piece : session_.built().pieces) {
      for (std::size_t i = 0; i < piece.flat.panels.size(); ++i) {
        EXPECT_EQ(panelAt(piece, testing::deepPoint(piece.flat.panels[i])), static_cast<int>(i))
            << style.id << ' ' << piece.net.panels[i].id;
      }
      EXPECT_EQ(panelAt(piece, {-1, -1}), -1);
      EXPECT_EQ(panelAt(piece, {piece.flat.width + 1, 5}), -1);
    }
  }
}

TEST_F(SheetViewTest, KeysZoomAndPanAndZeroShowsTheWholeSheet) {
  const double scale = view_.camera().scale();
  const QPointF at = corner();
  QTest::keyClick(&view_, Qt::Key_Plus);
  EXPECT_NEAR(view_.camera().scale(), scale * 1.25, 1e-9);
  QTest::keyClick(&view_, Qt::Key_Minus);
  EXPECT_NEAR(view_.camera().scale(), scale, 1e-9);
  const std::vector<std::pair<Qt::Key, QPointF>> pans{{Qt::Key_Left, {40, 0}},
                                                      {Qt::Key_Right, {-40, 0}},
                                                      {Qt::Key_Up, {0, 40}},
                                                      {Qt::Key_Down, {0, -40}}};
  for (const auto& [key, by] : pans) {
    const QPointF before = corner();
    QTest::keyClick(&view_, key);
    EXPECT_NEAR((corner() - before - by).manhattanLength(), 0, 1e-6);
  }
  QTest::keyClick(&view_, Qt::Key_Plus);
  QTest::keyClick(&view_, Qt::Key_0);
  EXPECT_NEAR((corner() - at).manhattanLength(), 0, 1e-6);
  EXPECT_NEAR(view_.camera().scale(), scale, 1e-9);
}

TEST_F(SheetViewTest, DraggingMovesTheSheetWithTheMouse) {
  const QPointF before = corner();
  QTest::mousePress(&view_, Qt::LeftButton, {}, {300, 300});
  QTest::mouseMove(&view_, {321, 287});
  QTest::mouseRelease(&view_, Qt::LeftButton, {}, {321, 287});
  EXPECT_NEAR((corner() - before - QPointF(21, -13)).manhattanLength(), 0, 1e-6);
  QTest::mouseMove(&view_, {400, 400});
  EXPECT_NEAR((corner() - before - QPointF(21, -13)).manhattanLength(), 0, 1e-6) << "let go";
}

TEST_F(SheetViewTest, TheMiddleButtonAndSpaceMoveTheSheetWhateverTheToolHolds) {
  /// Takes hold of anything.
  struct Greedy : SheetTool {
    [[nodiscard]] QString name() const override { return {}; }
    [[nodiscard]] QString icon() const override { return {}; }
    [[nodiscard]] Qt::Key key() const override { return Qt::Key_A; }
    [[nodiscard]] QString hint() const override { return {}; }
    bool press(SheetView&, const QMouseEvent&) override { return true; }
    void click(SheetView&, const QMouseEvent&) override { ++clicks; }
    int clicks = 0;
  } tool;
  view_.setTool(&tool);
  const auto moved = [&](Qt::MouseButton button) {
    const QPointF before = corner();
    QTest::mousePress(&view_, button, {}, {300, 300});
    QTest::mouseMove(&view_, {321, 287});
    QTest::mouseRelease(&view_, button, {}, {321, 287});
    return corner() - before;
  };
  EXPECT_EQ(moved(Qt::LeftButton), QPointF()) << "the tool has it";
  EXPECT_NEAR((moved(Qt::MiddleButton) - QPointF(21, -13)).manhattanLength(), 0, 1e-6);
  QTest::keyPress(&view_, Qt::Key_Space);
  EXPECT_NEAR((moved(Qt::LeftButton) - QPointF(21, -13)).manhattanLength(), 0, 1e-6);
  QTest::mouseClick(&view_, Qt::LeftButton, {}, {300, 300});
  EXPECT_EQ(tool.clicks, 0);
  QTest::keyRelease(&view_, Qt::Key_Space);
  QTest::mouseClick(&view_, Qt::LeftButton, {}, {300, 300});
  EXPECT_EQ(tool.clicks, 1);
  view_.setTool(nullptr);
}

TEST_F(SheetViewTest, TheWheelZoomsAboutThePointer) {
  const QPointF at(250, 220);
  const Point under = view_.camera().toSheet(at);
  const double scale = view_.camera().scale();
  QWheelEvent event(at, view_.mapToGlobal(at), {}, {0, 240}, Qt::NoButton, Qt::NoModifier,
                    Qt::NoScrollPhase, false);
  QApplication::sendEvent(&view_, &event);
  EXPECT_NEAR(view_.camera().scale(), scale * 1.25 * 1.25, 1e-9);
  EXPECT_NEAR((view_.camera().toScreen(under) - at).manhattanLength(), 0, 1e-6);
}

TEST_F(SheetViewTest, TheSheetIsFollowedUntilThePersonZooms) {
  const double before = view_.camera().scale();
  changeProduct(session_, *parseProduct("box:160x60x22mm"));
  const double followed = view_.camera().scale();
  EXPECT_LT(followed, before) << "a larger sheet is shown smaller";
  QTest::keyClick(&view_, Qt::Key_Plus);
  const double zoomed = view_.camera().scale();
  changeProduct(session_, *parseProduct("box:60x30x22mm"));
  EXPECT_EQ(view_.camera().scale(), zoomed);
}

TEST_F(SheetViewTest, APieceThatIsNoLongerThereGivesWayToTheFirst) {
  changeStyle(session_, "drawer-box");
  ASSERT_GT(session_.built().pieces.size(), 1U);
  view_.showPiece(1);
  EXPECT_EQ(view_.shownPiece(), 1);
  changeStyle(session_, "straight-tuck-box");
  EXPECT_EQ(view_.shownPiece(), 0);
  EXPECT_FALSE(view_.dimensionLabels().empty());
}

}  // namespace
}  // namespace creasewright
