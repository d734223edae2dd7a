// What is pointed at in one view is lit in all others: every kind of thing, through every view,
// with the mouse.

#include <QAbstractItemView>
#include <QApplication>
#include <QTabWidget>
#include <QTest>

#include <gtest/gtest.h>

#include "panels/glue_list.h"
#include "panels/length_row.h"
#include "panels/measures_panel.h"
#include "panels/outline_tree.h"
#include "panels/row_lights.h"
#include "panels/score_list.h"
#include "panels/step_list.h"
#include "preview/fold_panel.h"
#include "preview/fold_view.h"
#include "scene/sheet_view.h"
#include "session/places.h"
#include "shell/columns.h"
#include "shell/main_window.h"

namespace creasewright {
namespace {

class OneLight : public ::testing::Test {
 protected:
  OneLight() {
    window_.resize(1400, 900);
    window_.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&window_));
    EXPECT_TRUE(QTest::qWaitFor([&] { return window_.size() == QSize(1400, 900); }));
    showTab(steps());  // the list of steps is made when it is first seen
    nothing_ = shown();
  }

  Columns& columns() { return window_.columns(); }
  DesignSession& session() { return window_.session(); }
  const Place& lit() { return session().selection().lit(); }
  template <class List>
  List& list() {
    return *window_.findChild<List*>();
  }
  QAbstractItemView& steps() { return list<StepList>(); }
  void showTab(QAbstractItemView& list) {
    columns().drawer().setCurrentWidget(&list);
    (void)QTest::qWaitFor([&] { return list.isVisible(); });
  }

  static void forEachRow(const QAbstractItemModel& model, const QModelIndex& parent,
                         const std::function<void(const QModelIndex&)>& visit) {
    for (int row = 0; row < model.rowCount(parent); ++row) {
      const QModelIndex index = model.index(row, 0, parent);
      visit(index);
      forEachRow(model, index, visit);
    }
  }
  static QStringList tinted(const QAbstractItemView& list) {
    QStringList rows;
    forEachRow(*list.model(), {}, [&](const QModelIndex& row) {
      if (row.data(Qt::BackgroundRole).isValid()) rows += row.data().toString();
    });
    return rows;
  }
  QStringList litFields() {
    QStringList keys;
    for (auto* row : columns().measures().findChildren<LengthRow*>())
      if (row->field().property("lit").toBool()) keys += row->field().accessibleName();
    return keys;
  }

  /// What each view shows now, each in its own way.
  struct Shown {
    QImage sheet;
    QImage fold;
    QStringList scores, glue, steps, panels, measures;
  };
  Shown shown() {
    return {columns().sheet().grab().toImage(),
            columns().fold().view().grab().toImage(),
            tinted(list<ScoreList>()),
            tinted(list<GlueList>()),
            tinted(steps()),
            tinted(list<OutlineTree>()),
            litFields()};
  }
  /// Moves the mouse over a row.
  void pointAt(QAbstractItemView& view, const QModelIndex& row) {
    showTab(view);
    view.scrollTo(row);
    const QPoint at = view.visualRect(row).center();
    QMouseEvent move(QEvent::MouseMove, at, view.viewport()->mapToGlobal(at), Qt::NoButton,
                     Qt::NoButton, Qt::NoModifier);
    QApplication::sendEvent(view.viewport(), &move);
  }
  void leave(QWidget& widget) {
    QEvent event(QEvent::Leave);
    QApplication::sendEvent(&widget, &event);
  }
  QPoint onSheet(Point p) { return columns().sheet().camera().toScreen(p).toPoint(); }
  int panelNumber(const char* id) { return *session().built().pieces.front().net.find(id); }
  Point middleOf(const char* id) {
    const Bounds box = bounds(
        session().built().pieces.front().flat.panels.at(static_cast<std::size_t>(panelNumber(id))));
    return (box.low + box.high) / 2;
  }

  MainWindow window_;
  Shown nothing_;
};

TEST_F(OneLight, NothingIsLitWhereNothingIsPointedAt) {
  EXPECT_TRUE(lit().isEmpty());
  EXPECT_TRUE(nothing_.scores.isEmpty());
  EXPECT_TRUE(nothing_.glue.isEmpty());
  EXPECT_TRUE(nothing_.steps.isEmpty());
  EXPECT_TRUE(nothing_.panels.isEmpty());
  EXPECT_TRUE(nothing_.measures.isEmpty());
}

TEST_F(OneLight, APanelOfTheNet) {
  QTest::mouseMove(&columns().sheet(), onSheet(middleOf("base/front/wall")));
  const Shown now = shown();
  EXPECT_NE(now.sheet, nothing_.sheet);
  EXPECT_NE(now.fold, nothing_.fold);
  EXPECT_EQ(now.panels, QStringList("front wall"));
  EXPECT_FALSE(now.scores.isEmpty()) << "its edges are scored";
  EXPECT_FALSE(now.steps.isEmpty());
  for (const QString& row : now.glue) EXPECT_TRUE(row.contains("front wall")) << row.toStdString();
  EXPECT_EQ(now.glue.size(), 2) << "both tabs of the front wall go there";
  EXPECT_TRUE(now.measures.contains("Depth"));
  EXPECT_FALSE(now.measures.contains("Glue strip"));
}

TEST_F(OneLight, AFoldOfTheNet) {
  const BuiltPiece& piece = session().built().pieces.front();
  const Crease& fold = *piece.net.creaseOf(panelNumber("base/front/wall"));
  const auto number = static_cast<std::size_t>(&fold - piece.net.creases.data());
  const Segment& line = piece.flat.creases[number];
  QTest::mouseMove(&columns().sheet(), onSheet((line.a + line.b) / 2));
  ASSERT_EQ(lit().creases, std::vector<int>{static_cast<int>(number)});
  const Shown now = shown();
  EXPECT_NE(now.sheet, nothing_.sheet);
  EXPECT_NE(now.fold, nothing_.fold);
  EXPECT_EQ(now.panels, QStringList("front wall")) << "the panel that hangs on it";
  EXPECT_EQ(now.scores.size(), 1) << now.scores.join("; ").toStdString();
  EXPECT_TRUE(now.glue.isEmpty());
  EXPECT_FALSE(now.steps.isEmpty());
}

TEST_F(OneLight, AFaceOfTheFoldedBox) {
  FoldView& view = columns().fold().view();
  std::set<QString> seen;
  for (int y = 0; y < view.height(); y += 12)
    for (int x = 0; x < view.width(); x += 12) {
      QTest::mouseMove(&view, {x, y});
      if (lit().isEmpty()) continue;
      for (const QString& id : lit().panels) seen.insert(id);
      const Shown now = shown();
      ASSERT_NE(now.sheet, nothing_.sheet);
      ASSERT_NE(now.fold, nothing_.fold);
      ASSERT_EQ(now.panels.size(), 1);
      x += 60;
    }
  // The frame's four sides and two outer walls are seen from the front.
  for (const char* id : {"base/front/frame", "base/back/frame", "base/left/frame",
                         "base/right/frame", "base/front/wall"})
    EXPECT_TRUE(seen.contains(id)) << id;
  leave(view);
  EXPECT_TRUE(lit().isEmpty());
}

TEST_F(OneLight, AMeasureField) {
  for (auto* row : columns().measures().findChildren<LengthRow*>()) {
    QEnterEvent enter({5, 5}, {5, 5}, {5, 5});
    QApplication::sendEvent(row, &enter);
    ASSERT_FALSE(lit().isEmpty()) << row->field().accessibleName().toStdString();
    const Shown now = shown();
    EXPECT_NE(now.sheet, nothing_.sheet);
    EXPECT_FALSE(now.panels.isEmpty());
    EXPECT_EQ(now.measures, QStringList(row->field().accessibleName()));
    leave(*row);
    EXPECT_TRUE(lit().isEmpty());
  }
}

/// Every row of a list lights the sheet, or says nothing of the net.
TEST_F(OneLight, EveryRowOfEveryList) {
  QAbstractItemView* lists[] = {&list<ScoreList>(), &list<GlueList>(), &steps(),
                                &list<OutlineTree>()};
  for (QAbstractItemView* view : lists) {
    int places = 0;
    forEachRow(*view->model(), {}, [&](const QModelIndex& row) {
      if (row.data(kPlaceRole).value<Place>().isEmpty()) return;
      pointAt(*view, row);
      ASSERT_EQ(lit(), row.data(kPlaceRole).value<Place>());
      const Shown now = shown();
      EXPECT_NE(now.sheet, nothing_.sheet) << row.data().toString().toStdString();
      EXPECT_TRUE(row.data(Qt::BackgroundRole).isValid()) << "and itself";
      EXPECT_FALSE((now.panels + now.scores + now.steps + now.glue).isEmpty());
      ++places;
    });
    EXPECT_GE(places, 3);
    leave(*view->viewport());
  }
}

TEST_F(OneLight, AClickKeepsARowMovesTheFoldAndEscapeLetsItGo) {
  StepList& list = this->list<StepList>();
  showTab(list);
  QSlider& slider = columns().fold().slider();
  const int folded = slider.value();
  // What follows the folding stands on the strip behind the stages.
  const int stagesLong = 100 * session().built().pieces.front().net.stageCount();
  int flat = 0;
  int stages = 0;
  for (int row = 0; row < list.count(); ++row) {
    const Place place = list.item(row)->data(kPlaceRole).value<Place>();
    if (place.isEmpty()) continue;
    list.scrollToItem(list.item(row));
    QTest::mouseClick(list.viewport(), Qt::LeftButton, {},
                      list.visualItemRect(list.item(row)).center());
    EXPECT_NEAR(slider.value(), place.progress * stagesLong, 1);
    place.progress == 0 ? ++flat : ++stages;
    leave(*list.viewport());
    EXPECT_EQ(lit(), place) << "kept when the mouse has gone";
  }
  EXPECT_GT(flat, 3);
  EXPECT_GT(stages, 3);
  QTest::keyClick(&list, Qt::Key_Escape);
  EXPECT_TRUE(lit().isEmpty());
  EXPECT_GT(folded, 0);
}

}  // namespace
}  // namespace creasewright
