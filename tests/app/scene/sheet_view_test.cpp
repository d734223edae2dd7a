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
  [[nodiscard]] const Place& lit() const { return session_.selection().lit(); }
  [[nodiscard]] QPointF corner() const { return view_.camera().toScreen(Point{0, 0}); }
  /// The point of a panel that lies farthest from its edges, of a grid of points.
  static Point inside(const Polygon& panel) {
    const Bounds box = bounds(panel);
    constexpr int kPoints = 40;
    Point best = panel.front();
    double deepest = -1;
    for (int i = 1; i < kPoints; ++i)
      for (int k = 1; k < kPoints; ++k) {
        const Point p{box.low.x + box.width() * i / kPoints,
                      box.low.y + box.height() * k / kPoints};
        if (locate(p, panel) != Side::Inside) continue;
        double near = 1e9;
        for (std::size_t e = 0; e < panel.size(); ++e) {
          const Point a = panel[e];
          const Point way = panel[(e + 1) % panel.size()] - a;
          const double share = std::clamp(dot(p - a, way) / dot(way, way), 0.0, 1.0);
          near = std::min(near, distance(p, a + way * share));
        }
        if (near > deepest) deepest = near, best = p;
      }
    return best;
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
  int panels = 0;
  for (std::size_t i = 0; i < piece.flat.panels.size(); ++i) {
    const QPointF at = view_.camera().toScreen(inside(piece.flat.panels[i]));
    QTest::mouseMove(&view_, at.toPoint());
    if (!lit().creases.empty() || !lit().lines.empty()) continue;  // narrower than the mouse
    EXPECT_EQ(lit().panels, QStringList(QString::fromStdString(piece.net.panels[i].id)));
    ASSERT_FALSE(named.isEmpty());
    EXPECT_FALSE(named.last().front().toString().isEmpty());
    ++panels;
  }
  EXPECT_GT(panels, 10);
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(&view_, &leave);
  EXPECT_TRUE(lit().isEmpty());
  EXPECT_TRUE(named.last().front().toString().isEmpty());
}

TEST_F(SheetViewTest, EveryFoldIsFoundOnItsLine) {
  const BuiltPiece& piece = session_.built().pieces.front();
  for (std::size_t i = 0; i < piece.flat.creases.size(); ++i) {
    const Segment& line = piece.flat.creases[i];
    const QPointF at = view_.camera().toScreen((line.a + line.b) / 2);
    QTest::mouseMove(&view_, at.toPoint());
    EXPECT_EQ(lit().creases, std::vector<int>{static_cast<int>(i)});
    ASSERT_EQ(lit().lines.size(), 1U);
    EXPECT_EQ(lit().lines.front(), line);
    EXPECT_EQ(lit().panels.size(), 2);
  }
}

TEST_F(SheetViewTest, ATickOfARulerAndADimensionLightTheFoldsThere) {
  const BuiltPiece& piece = session_.built().pieces.front();
  int found = 0;
  for (const DimensionLabel& label : view_.dimensionLabels()) {
    if (!label.ofScore) continue;
    QTest::mouseMove(&view_, label.area().center().toPoint());
    const Place byLabel = lit();
    ASSERT_FALSE(byLabel.creases.empty()) << label.words.toStdString();
    for (const int crease : byLabel.creases) {
      const Segment& line = piece.flat.creases[static_cast<std::size_t>(crease)];
      EXPECT_NEAR(label.turned ? line.a.x : line.a.y, label.mm, 1e-3);
    }
    const QPointF on = view_.camera().toScreen(Point{label.mm, label.mm});
    const QPointF tick = label.turned ? QPointF(on.x(), 8) : QPointF(8, on.y());
    QTest::mouseMove(&view_, tick.toPoint());
    EXPECT_EQ(lit(), byLabel) << "at the ruler";
    ++found;
  }
  EXPECT_GE(found, 8);
}

TEST_F(SheetViewTest, AClickKeepsAThingAndAClickOnTheBenchLetsItGo) {
  const BuiltPiece& piece = session_.built().pieces.front();
  const QPoint at = view_.camera().toScreen(inside(piece.flat.panels.front())).toPoint();
  QTest::mouseClick(&view_, Qt::LeftButton, {}, at);
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(&view_, &leave);
  EXPECT_EQ(lit().panels, QStringList(QString::fromStdString(piece.net.panels.front().id)));
  QTest::mouseClick(&view_, Qt::LeftButton, {}, {40, 40});
  EXPECT_TRUE(lit().isEmpty());
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

/// The fold between the base and a wall, and where the mouse takes it.
class PullTest : public SheetViewTest {
 protected:
  [[nodiscard]] Segment fold(const char* panel) const {
    const BuiltPiece& piece = session_.built().pieces.front();
    const Crease& crease = *piece.net.creaseOf(*piece.net.find(panel));
    return piece.flat.creases[static_cast<std::size_t>(&crease - piece.net.creases.data())];
  }
  [[nodiscard]] QPoint onScreen(const Segment& line) const {
    return view_.camera().toScreen((line.a + line.b) / 2).toPoint();
  }
  void drag(QPoint from, QPoint by, Qt::KeyboardModifiers keys = {}) {
    QTest::mousePress(&view_, Qt::LeftButton, keys, from);
    for (const double share : {0.5, 0.8, 1.0}) {
      const QPointF at = QPointF(from) + QPointF(by) * share;
      QMouseEvent move(QEvent::MouseMove, at, view_.mapToGlobal(at), Qt::NoButton, Qt::LeftButton,
                       keys);
      QApplication::sendEvent(&view_, &move);
    }
  }
  void release(QPoint at) { QTest::mouseRelease(&view_, Qt::LeftButton, {}, at); }
  [[nodiscard]] double mm(const char* key) const { return session_.design().parameters.mm(key); }
};

TEST_F(PullTest, TheLineStaysUnderTheMouseAndItIsOneStepNamedAfterTheMeasure) {
  const Design before = session_.design();
  const QPoint from = onScreen(fold("base/back/wall"));
  drag(from, {0, -30});
  const QPoint now = onScreen(fold("base/back/wall"));
  EXPECT_NEAR(now.y(), from.y() - 30, view_.camera().scale() + 1) << "to the nearest millimetre";
  EXPECT_NEAR(now.x(), from.x(), 1);
  EXPECT_GT(mm("frame"), before.parameters.mm("frame") + 5);
  release(from + QPoint(0, -30));
  EXPECT_EQ(session_.history().count(), 1);
  EXPECT_EQ(session_.history().undoText(), "Frame");
  session_.history().undo();
  EXPECT_EQ(session_.design(), before);
}

TEST_F(PullTest, EscapePutsItBackAndANumberChoosesAnotherMeasure) {
  const Design before = session_.design();
  const QPoint from = onScreen(fold("base/back/wall"));
  drag(from, {0, -30});
  QTest::keyClick(&view_, Qt::Key_2);
  EXPECT_EQ(mm("frame"), before.parameters.mm("frame"));
  EXPECT_GT(mm("opening-width"), before.parameters.mm("opening-width") + 10);
  QTest::keyClick(&view_, Qt::Key_7);
  EXPECT_GT(mm("opening-width"), before.parameters.mm("opening-width") + 10)
      << "there is no seventh";
  QTest::keyClick(&view_, Qt::Key_Escape);
  EXPECT_EQ(session_.design(), before);
  release(from + QPoint(0, -30));
  EXPECT_EQ(session_.history().count(), 0) << "nothing to undo";
}

TEST_F(PullTest, ControlLeavesTheProductsRoomAndAltTheGrid) {
  const Design before = session_.design();
  const QPoint from = onScreen(fold("base/back/wall"));
  drag(from, {0, -30}, Qt::ControlModifier);
  release(from + QPoint(0, -30));
  for (const char* key : {"opening-length", "opening-width", "depth"})
    EXPECT_EQ(mm(key), before.parameters.mm(key)) << key;
  EXPECT_NE(session_.design(), before);
  session_.history().undo();
  view_.fit();
  drag(onScreen(fold("base/back/wall")), {0, -31}, Qt::AltModifier);
  EXPECT_GT(std::abs(mm("frame") - std::round(mm("frame"))), 1e-3) << "off the millimetre";
}

TEST_F(PullTest, ALimitStopsTheLine) {
  const QPoint from = onScreen(fold("base/back/wall"));
  drag(from, {0, 190});
  EXPECT_TRUE(session_.isCurrent());
  const double smallest = mm("frame");
  EXPECT_LT(smallest, 13);
  release(from + QPoint(0, 190));
  drag(onScreen(fold("base/back/wall")), {0, 60});
  EXPECT_EQ(mm("frame"), smallest) << "no farther";
}

TEST_F(PullTest, AKeptLineGoesAStepOfTheGridByAnArrow) {
  const QPoint at = onScreen(fold("base/back/wall"));
  QTest::mouseClick(&view_, Qt::LeftButton, {}, at);
  const double before = mm("frame");
  QTest::keyClick(&view_, Qt::Key_Up);
  EXPECT_NEAR(mm("frame"), before + 1, 1e-9);
  QTest::keyClick(&view_, Qt::Key_Up);
  QTest::keyClick(&view_, Qt::Key_Down);
  EXPECT_NEAR(mm("frame"), before + 1, 1e-9);
  const QPointF corner = this->corner();
  QTest::keyClick(&view_, Qt::Key_Left);
  EXPECT_NE(this->corner(), corner) << "a level line cannot go left: the sheet is moved";
}

TEST_F(PullTest, EveryLineOfEveryStyleIsPulledWithoutLosingTheDesign) {
  for (const Style& style : styles()) {
    changeStyle(session_, style.id);
    view_.fit();
    const Design before = session_.design();
    const BuiltPiece piece = session_.built().pieces.front();
    for (std::size_t i = 0; i < piece.flat.creases.size(); i += 5) {
      const QPoint from = onScreen(piece.flat.creases[i]);
      drag(from, {9, -14});
      EXPECT_TRUE(session_.isCurrent()) << style.id << i;
      release(from + QPoint(9, -14));
      while (session_.design() != before && session_.history().canUndo()) session_.history().undo();
      ASSERT_EQ(session_.design(), before) << style.id;
      view_.fit();
    }
  }
}

}  // namespace
}  // namespace creasewright
