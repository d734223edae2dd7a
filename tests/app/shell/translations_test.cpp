#include <QCoreApplication>
#include <QFile>

#include <gtest/gtest.h>

#include "bridge/problem_text.h"
#include "bridge/style_text.h"
#include "shell/language.h"

namespace creasewright {
namespace {

TEST(Translations, TheGermanFileIsComplete) {
  QFile file(CREASEWRIGHT_SOURCE_DIR "/translations/creasewright_de.ts");
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  const QByteArray ts = file.readAll();
  EXPECT_GT(ts.count("<source>"), 200);
  EXPECT_EQ(ts.count("type=\"unfinished\""), 0);
  EXPECT_EQ(ts.count("<translation></translation>"), 0);
}

TEST(Translations, GermanSpeaksGermanAndWritesACommaInDecimals) {
  useLanguage("de");
  const Problem tab{ProblemCode::ParameterTooLarge, "tab", {Length::mm(30.5), Length::mm(12)}};
  const QString sentence = problemSentence(tab, Unit::Millimetre);
  const QString panel = panelTitle("base/front/wall");
  useLanguage("en");
  EXPECT_EQ(sentence,
            "„Laschenbreite“ ist 30,5 mm, und 12 mm ist das Höchste, das hier passt. 12 mm oder "
            "weniger daraus machen.");
  EXPECT_EQ(panel, "Wand, vorn");
}

TEST(Translations, EnglishCountsPages) {
  const auto pages = [](int count) {
    return QCoreApplication::translate("creasewright::PrintDialog",
                                       "%n page(s) in true size. Print without scaling, then "
                                       "measure the check bars.",
                                       nullptr, count);
  };
  EXPECT_TRUE(pages(1).startsWith("1 page in"));
  EXPECT_TRUE(pages(4).startsWith("4 pages in"));
}

}  // namespace
}  // namespace creasewright
