#include "panels/changes_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QTest>
#include <QToolButton>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "document/design_file.h"
#include "panels/change_row.h"
#include "session/places.h"

namespace creasewright {
namespace {

class ChangesPanelTest : public ::testing::Test {
 protected:
  ChangesPanelTest() { changeStyle(session_, "straight-tuck-box"); }

  void add(std::string_view kind) {
    const QMenu* menu = panel_.findChild<QMenu*>();
    std::size_t row = 0;
    while (editKinds()[row].id != kind) ++row;
    menu->actions().at(static_cast<int>(row))->trigger();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  [[nodiscard]] ChangeRow& row(int index) const {
    return *panel_.findChildren<ChangeRow*>().at(index);
  }
  [[nodiscard]] const std::vector<Edit>& edits() const { return session_.design().edits; }

  DesignSession session_;
  ChangesPanel panel_{session_};
};

TEST_F(ChangesPanelTest, EveryKindIsAddedOnTheChosenPanelAsOneStep) {
  const Net& net = session_.built().pieces.front().net;
  session_.selection().keep(placeOfPanel(session_.built(), 0, *net.find("front")));
  int count = session_.history().count();
  for (const EditKind& kind : editKinds()) {
    add(kind.id);
    ASSERT_FALSE(edits().empty());
    EXPECT_EQ(edits().back().kind, kind.id);
    EXPECT_EQ(edits().back().panel, "front") << kind.id;
    EXPECT_EQ(edits().back().edge.empty(), kind.place == EditPlace::Panel) << kind.id;
    EXPECT_EQ(session_.history().count(), ++count);
  }
}

TEST_F(ChangesPanelTest, AHeartIsCutIntoTheFrontAndFollowsItsFields) {
  const Net& net = session_.built().pieces.front().net;
  session_.selection().keep(placeOfPanel(session_.built(), 0, *net.find("front")));
  const auto openings = [&] {
    const Net& now = session_.built().pieces.front().net;
    return now.panels[static_cast<std::size_t>(*now.find("front"))].openings.size();
  };
  ASSERT_EQ(openings(), 0U);
  add("opening");
  ASSERT_TRUE(session_.built().brokenEdits.empty());
  EXPECT_EQ(openings(), 1U);
  auto* on = row(0).findChild<QCheckBox*>();
  on->click();
  EXPECT_EQ(openings(), 0U) << "switched off";
  on->click();
  EXPECT_EQ(openings(), 1U);
  // A formula that cannot be is told, and the design keeps the edit.
  auto* field = row(0).findChildren<QLineEdit*>().front();
  field->setFocus();
  field->selectAll();
  QTest::keyClicks(field, "3 mm / 0");
  QTest::keyClick(field, Qt::Key_Return);
  EXPECT_EQ(session_.built().brokenEdits.size(), 1U);
  EXPECT_EQ(edits().size(), 1U);
  QString told;
  for (const QLabel* label : row(0).findChildren<QLabel*>())
    if (label->property("problem").toBool()) told += label->text();
  EXPECT_FALSE(told.isEmpty());
}

// Undoing everything and doing it again gives the same bytes.
TEST_F(ChangesPanelTest, OrderAndRemovalCanBeUndone) {
  const std::string before = writeDesign(session_.design());
  add("opening");
  add("corners");
  const auto button = [&](int index, const QString& name) {
    for (QToolButton* each : row(index).findChildren<QToolButton*>())
      if (each->accessibleName().startsWith(name)) return each;
    return static_cast<QToolButton*>(nullptr);
  };
  button(1, QStringLiteral("Make "))->click();
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  EXPECT_EQ(edits().front().kind, "corners");
  button(0, QStringLiteral("Remove "))->click();
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  ASSERT_EQ(edits().size(), 1U);
  EXPECT_EQ(edits().front().kind, "opening");
  const std::string after = writeDesign(session_.design());
  while (session_.history().undoText() != "style") session_.history().undo();
  EXPECT_EQ(writeDesign(session_.design()), before);
  while (session_.history().canRedo()) session_.history().redo();
  EXPECT_EQ(writeDesign(session_.design()), after);
}

}  // namespace
}  // namespace creasewright
