#include "shelf/samples_window.h"

#include <QDir>
#include <QFile>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include "bridge/language.h"
#include "document/build.h"
#include "document/design_file.h"
#include "shelf/sample_words.h"
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

/// Titles and notes are told to those who translate.
TEST(SamplesWindow, EveryTitleAndNoteCanBeTranslated) {
  for (const char* folder : {":/samples/inch", ":/samples/metric"}) {
    const QDir samples(QString::fromLatin1(folder));
    const QStringList names = samples.entryList({QStringLiteral("*.cwdesign")});
    ASSERT_EQ(names.size(), 10);
    for (const QString& name : names) {
      QFile file(samples.filePath(name));
      ASSERT_TRUE(file.open(QIODevice::ReadOnly));
      const Result<Design> design = readDesign(file.readAll().toStdString(), "sample");
      ASSERT_TRUE(design);
      EXPECT_TRUE(isSampleText(design->title)) << design->title;
      EXPECT_TRUE(isSampleText(design->notes)) << design->notes;
    }
  }
}

TEST(SamplesWindow, SpeaksTheLanguageOfTheWindow) {
  const std::string english = sampleGifts(Unit::Inch).at(0).title;
  useLanguage(QStringLiteral("de"));
  const Design gift = sampleGifts(Unit::Inch).at(0);
  useLanguage(QStringLiteral("en"));
  EXPECT_NE(gift.title, english);
  EXPECT_EQ(sampleGifts(Unit::Inch).at(0).title, english);
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
