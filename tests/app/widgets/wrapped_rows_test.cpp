#include "widgets/wrapped_rows.h"

#include <QTest>
#include <QTreeWidget>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

class WrappedRowsTest : public ::testing::Test {
 protected:
  WrappedRowsTest() {
    tree_.setHeaderHidden(true);
    tree_.setRootIsDecorated(false);
    tree_.setIndentation(16);
    new WrappedRows(&tree_);
    auto* heading = new QTreeWidgetItem(&tree_, {QStringLiteral("All four sides:")});
    row_ = new QTreeWidgetItem(heading, {QStringLiteral("Score all the way across at ") +
                                         QStringLiteral("12 3/16 in, ").repeated(12)});
    row_->setCheckState(0, Qt::Unchecked);
    tree_.expandAll();
    tree_.resize(300, 400);
    tree_.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&tree_));
  }
  [[nodiscard]] QRect rect() const { return tree_.visualItemRect(row_); }

  QTreeWidget tree_;
  QTreeWidgetItem* row_ = nullptr;
};

TEST_F(WrappedRowsTest, ALongRowTakesTheLinesThatItsWordsNeed) {
  const int narrow = rect().height();
  const int line = QFontMetrics(tree_.font()).lineSpacing();
  const int wide = QFontMetrics(tree_.font()).horizontalAdvance(row_->text(0));
  EXPECT_GE(narrow, line * (wide / 300 + 1)) << "all of it is shown";
  EXPECT_LE(rect().right(), tree_.viewport()->width()) << "nothing to scroll for";
  tree_.resize(wide + 120, 400);
  QTest::qWait(20);
  EXPECT_LT(rect().height(), narrow);
  EXPECT_GE(rect().height(), line);
}

TEST_F(WrappedRowsTest, TheBoxIsTickedByAClickOnItAndByTheSpaceKey) {
  const QPoint box = rect().topLeft() + QPoint(12, 12);
  QTest::mouseClick(tree_.viewport(), Qt::LeftButton, {}, box);
  EXPECT_EQ(row_->checkState(0), Qt::Checked);
  QTest::mouseClick(tree_.viewport(), Qt::LeftButton, {}, rect().center());
  EXPECT_EQ(row_->checkState(0), Qt::Checked) << "the words are no box";
  tree_.setCurrentItem(row_);
  QTest::keyClick(&tree_, Qt::Key_Space);
  EXPECT_EQ(row_->checkState(0), Qt::Unchecked);
}

}  // namespace
}  // namespace creasewright
