#include "gallery/gallery_view.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QListView>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include "bridge/style_text.h"
#include "commands/edits.h"
#include "gallery/gallery_model.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

class GalleryViewTest : public ::testing::Test {
 protected:
  void SetUp() override {
    view_.resize(900, 600);
    view_.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&view_));
    list_ = view_.findChild<QListView*>();
    ASSERT_NE(list_, nullptr);
  }

  [[nodiscard]] int shown() const { return list_->model()->rowCount(); }
  QCheckBox* box(const QString& title) {
    for (QCheckBox* box : view_.findChildren<QCheckBox*>()) {
      if (box->text() == title) {
        return box;
      }
    }
    return nullptr;
  }

  DesignSession session_;
  GalleryView view_{session_};
  QListView* list_ = nullptr;
};

TEST_F(GalleryViewTest, ShowsEveryStyleWithPicturesAndWords) {
  ASSERT_EQ(shown(), static_cast<int>(styles().size()) + 1);  // and the blank sheet
  for (int row = 0; row < shown(); ++row) {
    const QModelIndex index = list_->model()->index(row, 0);
    EXPECT_FALSE(index.data().toString().isEmpty());
    EXPECT_EQ(index.data(GalleryModel::DetailRole).toString().count(QLatin1Char('\n')), 1);
    const QImage folded = index.data(GalleryModel::FoldedRole).value<QImage>();
    const QImage blank = [&] {
      QImage clear(folded.size(), folded.format());
      clear.fill(Qt::transparent);
      return clear;
    }();
    EXPECT_NE(folded, blank) << index.data().toString().toStdString();
  }
}

/// Photos of the box before stay, and that is told; with none there is nothing to tell.
TEST_F(GalleryViewTest, AnotherStyleTellsOfPhotosThatStay) {
  const QSignalSpy told(&view_, &GalleryView::told);
  const auto chooseRow = [&](int row) {
    list_->setCurrentIndex(list_->model()->index(row, 0));
    QTest::keyClick(&view_, Qt::Key_Return);
  };
  chooseRow(3);
  EXPECT_EQ(told.count(), 0);
  const std::string before = session_.design().styleId;
  changePhotos(session_, {Photo{}}, QStringLiteral("photo"));
  const std::vector<Photo> photos = session_.design().photos;
  chooseRow(4);
  ASSERT_NE(session_.design().styleId, before);
  EXPECT_EQ(session_.design().photos, photos);
  ASSERT_EQ(told.count(), 1);
  EXPECT_TRUE(told.at(0).at(0).toString().contains(QStringLiteral("1 photo")));
  chooseRow(4);  // the same again
  EXPECT_EQ(told.count(), 1);
}

TEST_F(GalleryViewTest, FiltersKeepWhatIsAskedFor) {
  box(QStringLiteral("Shows the product"))->setChecked(true);
  const auto showing =
      std::ranges::count_if(styles(), [](const Style& style) { return style.traits.showsProduct; });
  EXPECT_EQ(shown(), showing + 1);
  box(QStringLiteral("Shows the product"))->setChecked(false);
  EXPECT_EQ(shown(), static_cast<int>(styles().size()) + 1);
}

TEST_F(GalleryViewTest, WordsFindAStyleByItsName) {
  auto* words = view_.findChild<QLineEdit*>();
  words->setText(QStringLiteral("belly"));
  ASSERT_EQ(shown(), 1);
  EXPECT_EQ(list_->model()->index(0, 0).data().toString(), QStringLiteral("Belly band"));
  words->setText(QStringLiteral("no such style"));
  EXPECT_EQ(shown(), 0);
}

TEST_F(GalleryViewTest, EnterChoosesAStyleAsOneUndoStep) {
  view_.findChild<QLineEdit*>()->setText(QStringLiteral("straight tuck"));
  ASSERT_EQ(shown(), 1);
  QSignalSpy done(&view_, &GalleryView::done);
  list_->setCurrentIndex(list_->model()->index(0, 0));
  QTest::keyClick(list_, Qt::Key_Return);
  EXPECT_EQ(done.count(), 1);
  EXPECT_EQ(session_.design().styleId, "straight-tuck-box");
  session_.history().undo();
  EXPECT_EQ(session_.design().styleId, "framed-tray");
}

TEST_F(GalleryViewTest, EscapeGoesBackWithoutAChange) {
  QSignalSpy done(&view_, &GalleryView::done);
  QTest::keyClick(&view_, Qt::Key_Escape);
  EXPECT_EQ(done.count(), 1);
  EXPECT_FALSE(session_.isDirty());
}

}  // namespace
}  // namespace creasewright
