#include "tools/select_tool.h"

#include <QComboBox>
#include <QLabel>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "scene/sheet_view.h"
#include "styles/registry.h"
#include "support/deep_point.h"
#include "tools/dimension_entry.h"
#include "widgets/length_edit.h"

namespace creasewright {
namespace {

class SelectToolTest : public ::testing::Test {
 protected:
  SelectToolTest() {
    view_.setTool(&tool_);
    view_.resize(700, 600);
    view_.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&view_));
  }
  [[nodiscard]] const Place& lit() const { return session_.selection().lit(); }
  [[nodiscard]] QPointF corner() const { return view_.camera().toScreen(Point{0, 0}); }

  DesignSession session_;
  SelectTool tool_;
  SheetView view_{session_};
};

TEST_F(SelectToolTest, ThePanelUnderTheMouseIsLitAndNamedUntilTheMouseLeaves) {
  QSignalSpy named(&view_, &SheetView::hovered);
  const BuiltPiece& piece = session_.built().pieces.front();
  int panels = 0;
  for (std::size_t i = 0; i < piece.flat.panels.size(); ++i) {
    const QPointF at = view_.camera().toScreen(testing::deepPoint(piece.flat.panels[i]));
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

TEST_F(SelectToolTest, EveryFoldIsFoundOnItsLine) {
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

TEST_F(SelectToolTest, ATickOfARulerAndADimensionLightTheFoldsThere) {
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

TEST_F(SelectToolTest, AClickKeepsAThingAndAClickOnTheBenchLetsItGo) {
  const BuiltPiece& piece = session_.built().pieces.front();
  const QPoint at =
      view_.camera().toScreen(testing::deepPoint(piece.flat.panels.front())).toPoint();
  QTest::mouseClick(&view_, Qt::LeftButton, {}, at);
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(&view_, &leave);
  EXPECT_EQ(lit().panels, QStringList(QString::fromStdString(piece.net.panels.front().id)));
  QTest::mouseClick(&view_, Qt::LeftButton, {}, {40, 40});
  EXPECT_TRUE(lit().isEmpty());
}

/// The fold between the base and a wall, and where the mouse takes it.
class PullTest : public SelectToolTest {
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

TEST_F(PullTest, ZeroChangesAllMeasuresEachALittleInOneStep) {
  const Design before = session_.design();
  const QPoint from = onScreen(fold("base/back/wall"));
  drag(from, {0, -60});
  const double alone = mm("frame") - before.parameters.mm("frame");
  QTest::keyClick(&view_, Qt::Key_0);
  int changed = 0;
  double most = 0;
  for (const ParameterSpec& spec : (*findStyle("framed-tray"))->parameters) {
    const double by = std::abs(mm(spec.key.data()) - before.parameters.mm(spec.key));
    changed += by > 0 ? 1 : 0;
    most = std::max(most, by);
  }
  EXPECT_GE(changed, 2);
  EXPECT_LT(most, alone - 3) << "each less than the one alone";
  const QPoint now = onScreen(fold("base/back/wall"));
  EXPECT_NEAR(now.y(), from.y() - 60, view_.camera().scale() + 1) << "to the nearest millimetre";
  QTest::keyClick(&view_, Qt::Key_1);
  EXPECT_NEAR(mm("frame") - before.parameters.mm("frame"), alone, 1e-9) << "one alone again";
  release(from + QPoint(0, -60));
  EXPECT_EQ(session_.history().count(), 1);
  session_.history().undo();
  EXPECT_EQ(session_.design(), before);
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

TEST_F(PullTest, BesideThePointerStandTheMeasureAndTheReadingsFromBothSides) {
  QSignalSpy said(&view_, &SheetView::hovered);
  const QPoint from = onScreen(fold("base/back/wall"));
  drag(from, {0, -30});
  const Segment line = fold("base/back/wall");
  const FlatNet& flat = session_.built().pieces.front().flat;
  const QString words = said.last().front().toString();
  const auto shown = [](double mm) { return QString::number(std::round(mm)); };
  EXPECT_TRUE(words.contains(shown(line.a.y) + " mm from below")) << words.toStdString();
  EXPECT_TRUE(words.contains(shown(flat.height - line.a.y) + " mm from above"))
      << words.toStdString();
}

TEST_F(PullTest, ACornerMovesBothLinesThatMeetInIt) {
  const Design before = session_.design();
  const BuiltPiece& piece = session_.built().pieces.front();
  const Polygon& base = piece.flat.panels[static_cast<std::size_t>(*piece.net.find("base"))];
  const Bounds box = bounds(base);
  const QPoint from = view_.camera().toScreen(box.high).toPoint();
  drag(from, {24, -16});
  const Bounds now = bounds(session_.built().pieces.front().flat.panels[static_cast<std::size_t>(
      *session_.built().pieces.front().net.find("base"))]);
  // The middle of the base stays, so a corner that goes 1 mm makes it 2 mm longer.
  const double mmPerPixel = 1 / view_.camera().scale();
  EXPECT_NEAR(now.width() - box.width(), 2 * 24 * mmPerPixel, 1.1);
  EXPECT_NEAR(now.height() - box.height(), 2 * 16 * mmPerPixel, 1.1);
  release(from + QPoint(24, -16));
  EXPECT_EQ(session_.history().count(), 1) << "one step";
  session_.history().undo();
  EXPECT_EQ(session_.design(), before);
}

/// A dimension that is typed.
class TypeTest : public PullTest {
 protected:
  DimensionEntry* open(const DimensionLabel& label) {
    QTest::mouseClick(&view_, Qt::LeftButton, {}, label.area().center().toPoint());
    return view_.findChild<DimensionEntry*>();
  }
  static void type(DimensionEntry& entry, const QString& words) {
    auto* field = entry.findChild<LengthEdit*>();
    field->selectAll();
    QTest::keyClicks(field, words);
    QTest::keyClick(field, Qt::Key_Return);
  }
  /// Whether the sheet has such a distance now.
  [[nodiscard]] bool isShown(const DimensionLabel& label, double mm) const {
    const FlatNet& flat = session_.built().pieces.front().flat;
    const auto near = [&](double other) { return std::abs(other - mm) < 2e-3; };
    if (!label.ofScore) return near(label.turned ? flat.height : flat.width);
    return std::ranges::any_of(view_.dimensionLabels(), [&](const DimensionLabel& now) {
      return now.ofScore && now.turned == label.turned && near(now.mm);
    });
  }
};

TEST_F(TypeTest, EveryDimensionOfATrayBecomesWhatIsTyped) {
  const auto labels = view_.dimensionLabels();
  int typed = 0;
  for (const DimensionLabel& label : labels) {
    const Design before = session_.design();
    const FlatNet flat = session_.built().pieces.front().flat;
    const QPointer<DimensionEntry> entry = open(label);
    ASSERT_NE(entry, nullptr) << label.words.toStdString();
    const double size = label.ofScore ? label.mm : label.turned ? flat.height : flat.width;
    type(*entry, QString::number(size + 2, 'f', 3) + " mm");
    // On the grid flaps give way in jumps: then the field stays and says what is nearest.
    EXPECT_EQ(entry->isHidden(), isShown(label, size + 2)) << label.words.toStdString();
    typed += entry->isHidden() ? 1 : 0;
    delete entry;
    while (session_.design() != before && session_.history().canUndo()) session_.history().undo();
    ASSERT_EQ(session_.design(), before);
  }
  EXPECT_GE(typed, 6);
}

TEST_F(TypeTest, ALimitIsSaidAndTheFieldStays) {
  const auto labels = view_.dimensionLabels();
  const auto wide = std::ranges::find_if(
      labels, [](const DimensionLabel& label) { return !label.ofScore && !label.turned; });
  DimensionEntry* entry = open(*wide);
  ASSERT_NE(entry, nullptr);
  type(*entry, "9000 mm");
  EXPECT_FALSE(entry->isHidden());
  QString said;
  for (const QLabel* label : entry->findChildren<QLabel*>())
    if (!label->isHidden()) said += label->text();
  EXPECT_TRUE(said.contains("300 mm or less")) << said.toStdString();
  EXPECT_TRUE(session_.isCurrent());
  entry->close();
}

TEST_F(TypeTest, AnotherMeasureCanBeChosen) {
  const auto labels = view_.dimensionLabels();
  const auto wide = std::ranges::find_if(
      labels, [](const DimensionLabel& label) { return !label.ofScore && !label.turned; });
  const double before = session_.built().pieces.front().flat.width;
  DimensionEntry* entry = open(*wide);
  ASSERT_NE(entry, nullptr);
  auto* measures = entry->findChild<QComboBox*>();
  ASSERT_GE(measures->count(), 2);
  auto* field = entry->findChild<LengthEdit*>();
  field->selectAll();
  QTest::keyClicks(field, QString::number(before + 8) + " mm");
  ASSERT_TRUE(field->commit());
  const Design first = session_.design();
  EXPECT_NEAR(session_.built().pieces.front().flat.width, before + 8, 1e-3);
  measures->setCurrentIndex(1);
  emit measures->activated(1);
  EXPECT_NE(session_.design(), first);
  EXPECT_NEAR(session_.built().pieces.front().flat.width, before + 8, 1e-3);
  EXPECT_EQ(session_.history().count(), 1);
  const int all = measures->count() - 1;
  EXPECT_EQ(measures->itemText(all), "all together, each a little");
  measures->setCurrentIndex(all);
  emit measures->activated(all);
  EXPECT_NEAR(session_.built().pieces.front().flat.width, before + 8, 1e-3);
  int changed = 0;
  for (const ParameterSpec& spec : (*findStyle("framed-tray"))->parameters)
    changed += session_.design().parameters.raw(spec.key) == first.parameters.raw(spec.key) ? 0 : 1;
  EXPECT_GE(changed, 2);
  EXPECT_EQ(session_.history().count(), 1);
  entry->close();
}

}  // namespace
}  // namespace creasewright
