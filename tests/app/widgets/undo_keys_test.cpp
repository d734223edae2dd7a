#include "widgets/undo_keys.h"

#include <QAction>
#include <QApplication>
#include <QPlainTextEdit>
#include <QTest>
#include <QVBoxLayout>
#include <QWidget>

#include <gtest/gtest.h>

#include "widgets/length_edit.h"

namespace creasewright {
namespace {

/// A window with an undo of its own and two fields.
struct Window {
  QWidget widget;
  LengthEdit* length = new LengthEdit(&widget);
  QPlainTextEdit* text = new QPlainTextEdit(&widget);
  int undone = 0;

  Window() {
    auto* column = new QVBoxLayout(&widget);
    column->addWidget(length);
    column->addWidget(text);
    auto* undo = new QAction(&widget);
    undo->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Z));
    QObject::connect(undo, &QAction::triggered, &widget, [this] { ++undone; });
    widget.addAction(undo);
    widget.show();
    widget.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&widget));
  }

  void undoIn(QWidget* field) {
    field->setFocus();
    QTest::keyClick(field, Qt::Key_Z, Qt::ControlModifier);
  }
};

TEST(UndoKeys, WithoutThemAFieldKeepsTheKeyItHasNoUseFor) {
  Window window;
  window.undoIn(window.length);
  EXPECT_EQ(window.undone, 0);
}

TEST(UndoKeys, AFieldWithNothingToUndoLeavesTheKeyToTheWindow) {
  QObject owner;
  new UndoKeys(&owner);
  Window window;
  window.length->setLength(Length::mm(12));
  window.undoIn(window.length);
  EXPECT_EQ(window.undone, 1);
  window.undoIn(window.text);
  EXPECT_EQ(window.undone, 2);
}

TEST(UndoKeys, WhatIsBeingTypedIsUndoneInItsField) {
  QObject owner;
  new UndoKeys(&owner);
  Window window;
  window.length->setLength(Length::mm(12));
  window.length->setFocus();
  window.length->selectAll();
  QTest::keyClicks(window.length, "34");
  window.undoIn(window.length);
  EXPECT_EQ(window.undone, 0);
  EXPECT_NE(window.length->text(), "34");
  QTest::keyClicks(window.text, "a word");
  window.undoIn(window.text);
  EXPECT_EQ(window.undone, 0);
  EXPECT_EQ(window.text->toPlainText(), "");
}

}  // namespace
}  // namespace creasewright
