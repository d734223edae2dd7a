#include "widgets/wheel_guard.h"

#include <QApplication>
#include <QComboBox>
#include <QScrollArea>
#include <QScrollBar>
#include <QSpinBox>
#include <QTest>
#include <QVBoxLayout>
#include <QWheelEvent>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

/// A column of fields longer than its window.
struct Column {
  QScrollArea area;
  QWidget* content = new QWidget;
  QComboBox* choice = new QComboBox(content);
  QSpinBox* number = new QSpinBox(content);

  Column() {
    auto* column = new QVBoxLayout(content);
    choice->addItems({"one", "two", "three"});
    number->setValue(5);
    column->addWidget(choice);
    column->addWidget(number);
    content->setMinimumHeight(2000);
    content->setFocusPolicy(Qt::StrongFocus);
    area.setWidget(content);
    area.resize(200, 200);
    area.show();
    area.activateWindow();
    QApplication::processEvents();
    content->setFocus();
  }

  /// As from the mouse: Qt may give `over` the focus before any filter sees the event.
  void wheel(QWidget* over) {
    const QPointF at(5, 5);
    QWheelEvent event(at, over->mapToGlobal(at), {}, {0, -120}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QSpontaneKeyEvent::setSpontaneous(&event);
    qApp->notify(over, &event);
  }
  [[nodiscard]] int scrolled() const { return area.verticalScrollBar()->value(); }
};

TEST(WheelGuard, WithoutItAWheelFromTheMouseTakesTheFocusAndTurnsTheList) {
  Column column;
  column.wheel(column.choice);
  EXPECT_TRUE(column.choice->hasFocus());
  EXPECT_EQ(column.choice->currentIndex(), 1);
}

TEST(WheelGuard, ScrollingPastAFieldScrollsTheColumnAndChangesNothing) {
  QObject owner;
  new WheelGuard(&owner);
  Column column;
  column.wheel(column.choice);
  EXPECT_EQ(column.choice->currentIndex(), 0);
  EXPECT_FALSE(column.choice->hasFocus());
  const int once = column.scrolled();
  EXPECT_GT(once, 0);
  column.wheel(column.number);
  EXPECT_EQ(column.number->value(), 5);
  EXPECT_GT(column.scrolled(), once);
}

TEST(WheelGuard, AClosedListNeverTurnsANumberDoesWithTheCursorInIt) {
  QObject owner;
  new WheelGuard(&owner);
  Column column;
  column.choice->setFocus();
  ASSERT_TRUE(column.choice->hasFocus());
  column.wheel(column.choice);
  EXPECT_EQ(column.choice->currentIndex(), 0);
  column.number->setFocus();
  column.wheel(column.number);
  EXPECT_EQ(column.number->value(), 4);
}

}  // namespace
}  // namespace creasewright
