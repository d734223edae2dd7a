#include "classroom/kit_contents.h"

#include <QComboBox>
#include <QListWidget>
#include <QSpinBox>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

class KitContentsTest : public ::testing::Test {
 protected:
  KitContentsTest() {
    Design design = *newDesign("two-piece-box", *parseProduct("box:60x40x25mm"), cards()[0],
                               Ease::Easy, ToolGrid::millimetre());
    design.title = "Soap box";
    ClassKit kit;
    kit.items = {{design, 1}};
    kit.blanks = {{"Panel", Length::inches(4), Length::inches(6), cards()[0], 3}};
    session_.start(kit);
  }

  QListWidget* list() { return contents_.findChild<QListWidget*>(); }
  QSpinBox* count() { return contents_.findChild<QSpinBox*>(); }
  QComboBox* piece() { return contents_.findChild<QComboBox*>(); }

  const ClassKit& kit() { return session_.kit(); }

  KitSession session_;
  KitContents contents_{session_};
};

TEST_F(KitContentsTest, CountsAndPiecesFollowTheChosenRow) {
  EXPECT_EQ(list()->item(0)->text(), QStringLiteral("Soap box"));
  EXPECT_EQ(list()->item(1)->text(), QStringLiteral("3 × Panel"));
  count()->setValue(2);
  EXPECT_EQ(kit().items[0].perPerson, 2);
  EXPECT_EQ(kit().blanks[0].perPerson, 3);
  const int lid = piece()->findData(QStringLiteral("lid"));
  ASSERT_GT(lid, 0);
  emit piece()->activated(lid);
  EXPECT_EQ(kit().items[0].piece, "lid");
  EXPECT_EQ(list()->item(0)->text(), QStringLiteral("2 × Soap box: only lid"));
  list()->setCurrentRow(1);
  EXPECT_EQ(count()->value(), 3);
  EXPECT_FALSE(piece()->isEnabled());
  EXPECT_EQ(kit().items[0].perPerson, 2);
  EXPECT_EQ(session_.history().count(), 2);
  session_.history().undo();
  EXPECT_EQ(list()->item(0)->text(), QStringLiteral("2 × Soap box"));
}

TEST_F(KitContentsTest, TheLastRowStays) {
  list()->setCurrentRow(0);
  EXPECT_TRUE(contents_.removeCurrent());
  EXPECT_TRUE(kit().items.empty());
  EXPECT_FALSE(contents_.removeCurrent());
  EXPECT_EQ(kit().blanks.size(), 1U);
  session_.history().undo();
  EXPECT_EQ(list()->count(), 2);
}

}  // namespace
}  // namespace creasewright
