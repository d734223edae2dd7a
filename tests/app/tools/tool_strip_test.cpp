#include "tools/tool_strip.h"

#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include <gtest/gtest.h>

#include "scene/sheet_view.h"
#include "tools/measure_tool.h"

namespace creasewright {
namespace {

class ToolStripTest : public ::testing::Test {
 protected:
  ToolStripTest() {
    view_.resize(700, 600);
    view_.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&view_));
  }
  QPoint onScreen(Point at) { return view_.camera().toScreen(at).toPoint(); }

  DesignSession session_;
  SheetView view_{session_};
  ToolStrip strip_{view_};
};

TEST_F(ToolStripTest, OneToolIsChosenByItsButtonOrItsKey) {
  ASSERT_GE(strip_.tools().size(), 2U);
  EXPECT_EQ(view_.tool(), strip_.tools().front().get());
  const auto buttons = strip_.findChildren<QToolButton*>();
  ASSERT_EQ(static_cast<std::size_t>(buttons.size()), strip_.tools().size());
  QSignalSpy said(&view_, &SheetView::hovered);
  for (std::size_t i = strip_.tools().size(); i-- > 0;) {
    buttons[static_cast<int>(i)]->click();
    EXPECT_EQ(view_.tool(), strip_.tools()[i].get());
    EXPECT_EQ(said.last().front().toString(), view_.tool()->hint());
    EXPECT_TRUE(buttons[static_cast<int>(i)]->isChecked());
  }
  view_.activateWindow();
  view_.setFocus();
  for (const auto& tool : strip_.tools()) {
    QTest::keyClick(&view_, tool->key());
    EXPECT_EQ(view_.tool(), tool.get());
  }
}

TEST_F(ToolStripTest, NoTwoToolsHaveOneKeyOrName) {
  for (const auto& a : strip_.tools())
    for (const auto& b : strip_.tools())
      if (a != b) {
        EXPECT_NE(a->key(), b->key());
        EXPECT_NE(a->name(), b->name());
      }
}

TEST_F(ToolStripTest, MeasuringTellsTheDistanceBetweenWhatWasClicked) {
  auto* tool = dynamic_cast<MeasureTool*>(strip_.tools()[1].get());
  ASSERT_NE(tool, nullptr);
  view_.setTool(tool);
  EXPECT_TRUE(tool->reading(view_).isEmpty());
  const FlatNet& flat = session_.built().pieces.front().flat;
  const Polygon& base = flat.panels.front();
  QTest::mouseClick(&view_, Qt::LeftButton, {}, onScreen(base[0]));
  QTest::mouseClick(&view_, Qt::LeftButton, {}, onScreen(base[1]));
  const double side = distance(base[0], base[1]);
  EXPECT_TRUE(tool->reading(view_).startsWith(QString::number(side, 'g', 4)))
      << tool->reading(view_).toStdString() << ' ' << side;
  QTest::keyClick(&view_, Qt::Key_Escape);
  EXPECT_TRUE(tool->reading(view_).isEmpty());
  EXPECT_TRUE(session_.history().count() == 0) << "measuring changes nothing";
}

TEST_F(ToolStripTest, TheStripMayGoBeforeTheSheet) {
  {
    ToolStrip other(view_);
    EXPECT_EQ(view_.tool(), other.tools().front().get());
  }
  EXPECT_EQ(view_.tool(), nullptr);
}

}  // namespace
}  // namespace creasewright
