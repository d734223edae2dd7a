#include "scene/sheet_view.h"

#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "geometry/region.h"
#include "scene/net_picture.h"
#include "styles/registry.h"

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
  /// Just inside the panel beside the middle of its longest edge, where other panels seldom lie.
  static Point inside(const Polygon& panel) {
    std::size_t longest = 0;
    const auto edge = [&](std::size_t i) { return panel[(i + 1) % panel.size()] - panel[i]; };
    for (std::size_t i = 1; i < panel.size(); ++i)
      if (std::hypot(edge(i).x, edge(i).y) > std::hypot(edge(longest).x, edge(longest).y))
        longest = i;
    const Point middle = panel[longest] + edge(longest) / 2;
    const Point in = turnLeft(unit(edge(longest))) * (signedArea(panel) > 0 ? 0.4 : -0.4);
    return middle + in;
  }

  DesignSession session_;
  SheetView view_{session_};
};

TEST_F(SheetViewTest, EveryPanelOfEveryStyleIsFoundUnderItsOwnPlace) {
  for (const Style& style : styles()) {
    changeStyle(session_, style.id);
    for (const BuiltPiece& piece : session_.built().pieces) {
      for (std::size_t i = 0; i < piece.flat.panels.size(); ++i) {
        EXPECT_EQ(panelAt(piece, inside(piece.flat.panels[i])), static_cast<int>(i))
            << style.id << ' ' << piece.net.panels[i].id;
      }
      EXPECT_EQ(panelAt(piece, {-1, -1}), -1);
      EXPECT_EQ(panelAt(piece, {piece.flat.width + 1, 5}), -1);
    }
  }
}

TEST_F(SheetViewTest, ThePanelUnderTheMouseIsLitAndNamedUntilTheMouseLeaves) {
  QSignalSpy named(&view_, &SheetView::hovered);
  const BuiltPiece& piece = session_.built().pieces.front();
  for (std::size_t i = 0; i < piece.flat.panels.size(); ++i) {
    const QPointF at = view_.camera().toScreen(inside(piece.flat.panels[i]));
    QTest::mouseMove(&view_, at.toPoint());
    const int found = panelAt(piece, view_.camera().toSheet(at.toPoint()));
    ASSERT_GE(found, 0);
    EXPECT_EQ(
        session_.highlight(),
        QStringList(QString::fromStdString(piece.net.panels[static_cast<std::size_t>(found)].id)));
    ASSERT_FALSE(named.isEmpty());
    EXPECT_FALSE(named.last().front().toString().isEmpty());
  }
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(&view_, &leave);
  EXPECT_TRUE(session_.highlight().isEmpty());
  EXPECT_TRUE(named.last().front().toString().isEmpty());
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
