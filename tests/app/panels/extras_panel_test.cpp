#include "panels/extras_panel.h"

#include <QAction>
#include <QComboBox>
#include <QCoreApplication>
#include <QMenu>
#include <QPlainTextEdit>
#include <QToolButton>

#include <gtest/gtest.h>

#include "bridge/style_text.h"
#include "commands/edits.h"
#include "panels/extra_row.h"

namespace creasewright {
namespace {

class ExtrasPanelTest : public ::testing::Test {
 protected:
  ExtrasPanelTest() : panel_(session_) {
    session_.start(*newDesign("straight-tuck-box", *parseProduct("box:60x35x120mm"), cards()[0],
                              Ease::Easy, ToolGrid::millimetre()),
                   {});
  }

  void add(std::string_view kind) {
    for (auto* button : panel_.findChildren<QToolButton*>())
      if (button->menu() != nullptr)
        for (QAction* action : button->menu()->actions())
          if (action->text() == extraTitle(kind)) action->trigger();
  }

  DesignSession session_;
  ExtrasPanel panel_;
};

TEST_F(ExtrasPanelTest, AddsWhatTheMenuNamesAndUndoesIt) {
  add("belly-band");
  add("label");
  ASSERT_EQ(session_.design().extras.size(), 2U);
  EXPECT_EQ(session_.design().extras[1].kind, "label");
  EXPECT_EQ(session_.built().pieces.size(), 4U);  // box, band, mat layer, label
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  EXPECT_EQ(panel_.findChildren<ExtraRow*>().size(), 2);
  session_.history().undo();
  EXPECT_EQ(session_.design().extras.size(), 1U);
}

TEST_F(ExtrasPanelTest, TypingATextIsOneStep) {
  add("label");
  const int before = session_.history().count();
  auto* text = panel_.findChild<QPlainTextEdit*>();
  ASSERT_NE(text, nullptr);
  text->setPlainText("Plum");
  text->setPlainText("Plum jam\nfrom the mill");
  EXPECT_EQ(session_.history().count(), before + 1);
  const std::vector<std::string> lines{"Plum jam", "from the mill"};
  EXPECT_EQ(session_.design().extras[0].lines, lines);
}

TEST_F(ExtrasPanelTest, AFaceIsChosenAmongThoseThatShow) {
  add("label");
  bool chosen = false;
  for (auto* box : panel_.findChildren<QComboBox*>()) {
    const int row = box->findData("box:front");
    if (row < 0) continue;
    box->setCurrentIndex(row);
    emit box->activated(row);
    chosen = true;
  }
  ASSERT_TRUE(chosen);
  EXPECT_EQ(session_.design().extras[0].face, "box:front");
  EXPECT_TRUE(session_.problems().empty());
}

TEST_F(ExtrasPanelTest, AnotherStyleKeepsTheExtrasAndFindsTheirFaceAnew) {
  add("label");
  std::vector<Extra> extras = session_.design().extras;
  extras[0].face = "box:front";
  changeExtras(session_, extras, {});
  changeStyle(session_, "two-piece-box");
  ASSERT_EQ(session_.design().extras.size(), 1U);
  EXPECT_EQ(session_.design().extras[0].face, "");
  EXPECT_TRUE(session_.problems().empty());
}

}  // namespace
}  // namespace creasewright
