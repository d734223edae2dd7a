#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QXmlStreamReader>
#include <set>

#include <gtest/gtest.h>

#include "bridge/language.h"
#include "bridge/problem_text.h"
#include "bridge/style_text.h"

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

/// Contexts and sources of all texts that carry a number.
std::set<std::pair<std::string, std::string>> numbered(const char* file) {
  std::set<std::pair<std::string, std::string>> found;
  QFile ts(file);
  EXPECT_TRUE(ts.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&ts);
  QString context;
  bool counts = false;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) {
      continue;
    }
    if (xml.name() == QLatin1String("name")) {
      context = xml.readElementText();
    } else if (xml.name() == QLatin1String("message")) {
      counts = xml.attributes().hasAttribute(QLatin1String("numerus"));
    } else if (xml.name() == QLatin1String("source") && counts) {
      found.insert({context.toStdString(), xml.readElementText().toStdString()});
    }
  }
  EXPECT_FALSE(xml.hasError());
  return found;
}

/// English texts are the sources themselves, but for one and many: each has both.
TEST(Translations, EnglishHasEveryNumber) {
  const auto english = numbered(CREASEWRIGHT_SOURCE_DIR "/translations/creasewright_en.ts");
  const auto german = numbered(CREASEWRIGHT_SOURCE_DIR "/translations/creasewright_de.ts");
  EXPECT_GT(german.size(), 50U);
  for (const auto& [context, source] : german) {
    EXPECT_EQ(english.count({context, source}), 1U) << context << ": " << source;
  }
}

TEST(Translations, GermanSpeaksGermanAndWritesACommaInDecimals) {
  useLanguage("de");
  const Problem tab{ProblemCode::ParameterTooLarge, "tab", {Length::mm(30.5), Length::mm(12)}};
  const QString sentence = problemSentence(tab, Unit::Millimetre);
  const QString panel = panelTitle("base/front/wall");
  useLanguage("en");
  EXPECT_EQ(sentence,
            "„Laschenbreite“ ist 30,5 mm, möglich sind höchstens 12 mm. Auf 12 mm oder weniger "
            "ändern.");
  EXPECT_EQ(panel, "Wand vorn");
}

/// A language is named once: by its file, which says what the language calls itself.
TEST(Translations, EveryLanguageIsOfferedByItsOwnName) {
  loadResources();
  std::set<QString> files;
  for (const QString& file :
       QDir(CREASEWRIGHT_SOURCE_DIR "/translations").entryList({"creasewright_*.ts"})) {
    files.insert(file.mid(13).chopped(3));
  }
  std::set<QString> offered;
  std::set<QString> names;
  for (const Language& language : languages()) {
    offered.insert(language.code);
    names.insert(language.ownName);
  }
  EXPECT_EQ(offered, files);
  EXPECT_EQ(names.size(), files.size()) << "a language without a name of its own";
  ASSERT_GE(languages().size(), 2U);
  EXPECT_EQ(languages()[0].code, QStringLiteral("en"));
  EXPECT_EQ(languages()[0].ownName, QStringLiteral("English"));
  EXPECT_TRUE(names.contains(QStringLiteral("Deutsch")));
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
