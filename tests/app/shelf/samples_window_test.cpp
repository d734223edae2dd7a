#include "shelf/samples_window.h"

#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include "document/build.h"
#include "styles/parameter_text.h"

namespace creasewright {
namespace {

TEST(SamplesWindow, OffersTenGiftsInEitherSystem) {
  for (const Unit unit : {Unit::Inch, Unit::Millimetre}) {
    const std::vector<Design> gifts = sampleGifts(unit);
    EXPECT_EQ(gifts.size(), 10U);
    for (const Design& gift : gifts) {
      EXPECT_EQ(unitOf(gift.grid), unit) << gift.title;
      const Result<BuiltDesign> built = build(gift);
      ASSERT_TRUE(built) << gift.title;
      EXPECT_TRUE(built->problems.empty()) << gift.title;
    }
  }
}

TEST(SamplesWindow, GivesTheOneThatIsChosen) {
  SamplesWindow window(Unit::Inch);
  window.show();
  auto* list = window.findChild<QListWidget*>();
  ASSERT_NE(list, nullptr);
  ASSERT_EQ(list->count(), 10);
  for (int row = 0; row < list->count(); ++row) EXPECT_FALSE(list->item(row)->icon().isNull());
  list->setCurrentRow(3);
  QTest::keyClick(list, Qt::Key_Return);
  ASSERT_TRUE(window.chosen());
  EXPECT_EQ(window.chosen()->title, sampleGifts(Unit::Inch).at(3).title);
  EXPECT_EQ(window.result(), QDialog::Accepted);
}

TEST(SamplesWindow, ClosedItGivesNone) {
  SamplesWindow window(Unit::Millimetre);
  window.show();
  QTest::keyClick(&window, Qt::Key_Escape);
  EXPECT_FALSE(window.chosen());
}

}  // namespace
}  // namespace creasewright
