#include <QDir>
#include <QFile>
#include <QLabel>
#include <QListView>
#include <QTest>

#include <gtest/gtest.h>

#include "bridge/design_words.h"
#include "bridge/text.h"
#include "commands/edits.h"
#include "gallery/gallery_model.h"
#include "gallery/gallery_view.h"
#include "keeping/design_menu.h"
#include "kept_styles/style_store.h"
#include "panels/measures_panel.h"
#include "styles/registry.h"
#include "support/heart_box.h"

namespace creasewright {
namespace {

class OwnStylesInGallery : public ::testing::Test {
 protected:
  void SetUp() override {
    style_ = testing::heartStyle();
    ASSERT_FALSE(storeOwnStyle(style_));
    session_.start(testing::plainTuckBox(), {});
    view_.resize(900, 600);
    view_.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&view_));
  }
  void TearDown() override { QDir(ownStylesFolder()).removeRecursively(); }

  [[nodiscard]] int rows() const { return list()->model()->rowCount(); }
  [[nodiscard]] QListView* list() const { return view_.findChild<QListView*>(); }
  [[nodiscard]] QModelIndex own() const {
    for (int row = 0; row < rows(); ++row) {
      const QModelIndex index = list()->model()->index(row, 0);
      if (index.data(GalleryModel::OwnRole).toBool()) return index;
    }
    return {};
  }
  void choose(const QModelIndex& index) {
    list()->setCurrentIndex(index);
    QTest::keyClick(list(), Qt::Key_Return);
  }

  OwnStyle style_;
  DesignSession session_;
  GalleryView view_{session_};
};

TEST_F(OwnStylesInGallery, StandsBesideTheBuiltInOnes) {
  EXPECT_EQ(rows(), static_cast<int>(styles().size()) + 2);
  ASSERT_TRUE(own().isValid());
  EXPECT_EQ(own().data().toString(), "Heart box");
  const QModelIndex last = list()->model()->index(rows() - 1, 0);
  EXPECT_EQ(last.data().toString(), "Blank sheet");
}

TEST_F(OwnStylesInGallery, IsChosenAsOneUndoStepAndShowsItsMeasures) {
  MeasuresPanel measures(session_);
  EXPECT_NE(measures.lengthField("seam"), nullptr);
  choose(own());
  ASSERT_TRUE(session_.design().ownStyle);
  EXPECT_EQ(*session_.design().ownStyle, style_);
  EXPECT_EQ(measures.lengthField("seam"), nullptr) << "not among those that are seen";
  EXPECT_NE(measures.lengthField("height"), nullptr);
  EXPECT_EQ(session_.history().count(), 1);
  session_.history().undo();
  EXPECT_FALSE(session_.design().ownStyle);
  EXPECT_NE(measures.lengthField("seam"), nullptr);
  EXPECT_FALSE(session_.isDirty());
}

TEST_F(OwnStylesInGallery, AMeasureThatIsTypedTakesItsRuleAlong) {
  choose(own());
  const Length before = session_.design().parameters.length("tuck");
  changeParameter(session_, "width", Length::mm(80).nm());
  EXPECT_EQ(session_.design().parameters.length("tuck"), Length::mm(40));
  session_.history().undo();
  EXPECT_EQ(session_.design().parameters.length("tuck"), before);
}

/// What the design in hand was kept from is not made twice.
TEST_F(OwnStylesInGallery, BringsItsChangesOnce) {
  Design design = testing::plainTuckBox();
  design.edits = style_.edits;
  session_.start(design, {});
  view_.refresh();
  choose(own());
  EXPECT_TRUE(session_.design().edits.empty());
  freeFromStyle(session_);
  EXPECT_FALSE(session_.design().ownStyle);
  EXPECT_EQ(session_.design().edits, style_.edits);
}

TEST_F(OwnStylesInGallery, IsOpenedToBeChanged) {
  DesignMenu menu(session_, view_, nullptr);
  emit view_.changeAsked(text(style_.id));
  EXPECT_FALSE(session_.design().ownStyle);
  EXPECT_EQ(session_.design().edits, style_.edits);
  EXPECT_EQ(session_.design().product, testing::plainTuckBox().product);
  session_.history().undo();
  EXPECT_EQ(session_.design(), testing::plainTuckBox());
}

TEST_F(OwnStylesInGallery, IsTakenFromAFileAndRemoved) {
  const QString file = QDir::temp().filePath("creasewright-taken.cwstyle");
  ASSERT_FALSE(writeOwnStyleFile(style_, QFile::encodeName(file).toStdString()));
  ASSERT_FALSE(removeOwnStyle(style_.id));
  view_.refresh();
  EXPECT_FALSE(own().isValid());
  DesignMenu menu(session_, view_, nullptr);
  menu.take(file);
  EXPECT_TRUE(own().isValid());
  EXPECT_EQ(list()->currentIndex(), own());
  EXPECT_EQ(ownStyleCalled(style_.id), style_);
  QFile::remove(file);
}

TEST_F(OwnStylesInGallery, AnUnreadableFileIsNamedAndHindersNoOther) {
  QFile broken(ownStylesFolder() + "/broken.cwstyle");
  ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
  broken.write("{}");
  broken.close();
  view_.refresh();
  EXPECT_TRUE(own().isValid());
  bool named = false;
  for (QLabel* label : view_.findChildren<QLabel*>())
    named = named || (label->isVisible() && label->text().contains("broken.cwstyle"));
  EXPECT_TRUE(named);
}

}  // namespace
}  // namespace creasewright
