#include "widgets/wheel_guard.h"

#include <QApplication>
#include <QComboBox>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QWheelEvent>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

void wheel(QWidget* over) {
  const QPointF at(5, 5);
  QWheelEvent event(at, over->mapToGlobal(at), {}, {0, -120}, Qt::NoButton, Qt::NoModifier,
                    Qt::NoScrollPhase, false);
  QApplication::sendEvent(over, &event);
}

TEST(WheelGuard, ScrollingPastAFieldDoesNotChangeIt) {
  QScrollArea area;
  auto* content = new QWidget;
  auto* column = new QVBoxLayout(content);
  auto* choice = new QComboBox(content);
  choice->addItems({"one", "two", "three"});
  column->addWidget(choice);
  content->setMinimumHeight(2000);
  area.setWidget(content);
  area.resize(200, 200);
  area.show();
  area.activateWindow();
  QApplication::processEvents();
  content->setFocus();
  wheel(choice);
  EXPECT_EQ(choice->currentIndex(), 1);  // without the guard it changes
  choice->setCurrentIndex(0);

  new WheelGuard(&area);
  wheel(choice);
  EXPECT_EQ(choice->currentIndex(), 0);
  choice->setFocus();
  ASSERT_TRUE(choice->hasFocus());
  wheel(choice);
  EXPECT_EQ(choice->currentIndex(), 1);  // who has chosen the field means it
}

}  // namespace
}  // namespace creasewright
