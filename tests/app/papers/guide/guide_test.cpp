#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

#include "guide/make_guide.h"
#include "papers/guide/guide_html.h"
#include "papers/guide/guide_pages.h"
#include "papers/guide/guide_parts.h"
#include "papers/guide/write_guide.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

BuiltDesign standard(const Style& style) {
  const auto design = newDesign(style.id, std::nullopt, {"test", "test card", Length::mm(0.3), 0},
                                Ease::Easy, ToolGrid::sixteenthInch());
  const auto built = build(*design);
  EXPECT_TRUE(built.ok());
  return *built;
}

/// Sentences name numbers and panels, never codes or empty places.
TEST(GuideWords, EveryStepOfEveryStyleIsToldInWholeSentences) {
  for (const Style& style : styles()) {
    const BuiltDesign built = standard(style);
    const Guide guide = makeGuide(built);
    for (const GuideUnits units : {GuideUnits::Inch, GuideUnits::Millimetre, GuideUnits::Both}) {
      const GuideWords words = wordGuide(guide, built, units);
      ASSERT_EQ(words.steps.size(), guide.steps.size()) << style.id;
      for (const StepWords& step : words.steps) {
        EXPECT_FALSE(step.title.isEmpty()) << style.id;
        EXPECT_FALSE(step.sentences.isEmpty()) << style.id << step.title.toStdString();
        for (const QString& sentence : step.told() + step.checks) {
          EXPECT_FALSE(sentence.trimmed().isEmpty()) << style.id;
          EXPECT_FALSE(sentence.contains(QLatin1String("%1"))) << sentence.toStdString();
          EXPECT_FALSE(sentence.contains(QLatin1String("%2"))) << sentence.toStdString();
        }
      }
      EXPECT_FALSE(words.supplies.isEmpty());
      // Each caution once, and that local rules go first, once.
      QStringList cautions = words.cautions;
      EXPECT_GE(cautions.size(), 2) << style.id;
      EXPECT_EQ(cautions.removeDuplicates(), 0) << style.id;
      EXPECT_EQ(words.cautions.join(QLatin1Char(' ')).count(QLatin1String("ollow local rules")), 1);
      EXPECT_TRUE(words.cautions.last().contains(QLatin1String("ollow local rules")));
    }
  }
}

/// The trade's check values of the framed tray, as they are read in its guide.
TEST(GuideWords, TheFramedTrayReadsItsSettings) {
  const BuiltDesign built = standard(**findStyle("framed-tray"));
  const GuideWords words = wordGuide(makeGuide(built), built, GuideUnits::Inch);
  ASSERT_GT(words.steps.size(), 2u);
  EXPECT_TRUE(words.steps[0].sentences[0].contains(QStringLiteral("×")));
  EXPECT_TRUE(
      words.steps[1].sentences.join(QLatin1Char(' ')).contains(QStringLiteral("All four sides")))
      << words.steps[1].sentences.join(QLatin1Char('|')).toStdString();
}

/// A curved panel is one panel, its arcs are curves, and the seam comes before the ends.
TEST(GuideWords, ThePillowBoxIsToldInWholePanelsAndCurves) {
  const BuiltDesign built = standard(**findStyle("pillow-box"));
  const Guide guide = makeGuide(built);
  const GuideWords words = wordGuide(guide, built, GuideUnits::Millimetre);
  QStringList all;
  for (const StepWords& step : words.steps) {
    all += step.told() + step.checks;
  }
  const QString told = all.join(QLatin1Char('\n'));
  EXPECT_TRUE(told.contains(QLatin1String("Trace 4 curved line"))) << told.toStdString();
  EXPECT_TRUE(told.contains(QLatin1String("Fold 6 lines towards you"))) << told.toStdString();
  EXPECT_FALSE(told.contains(QLatin1Char('#'))) << told.toStdString();
  EXPECT_FALSE(told.contains(QRegularExpression(QStringLiteral("(flap|strip|front|back) \\d"))))
      << told.toStdString();
  EXPECT_FALSE(told.contains(QLatin1String("Score from ("))) << told.toStdString();
  const auto seam = told.indexOf(QRegularExpression(QStringLiteral("Press “a” onto")));
  const auto ends = told.indexOf(QLatin1String("Press the curved scores in"));
  EXPECT_GE(seam, 0) << told.toStdString();
  EXPECT_GT(ends, seam);
}

/// What the hand does with a bag and a box that are kept flat stands in words, in its order.
TEST(GuideWords, BagAndCrashLockAreFoldedFlatAndOpenedInWords) {
  const auto expectOrder = [](const char* id, const std::vector<QString>& patterns) {
    const BuiltDesign built = standard(**findStyle(id));
    QString told;
    for (const StepWords& step : wordGuide(makeGuide(built), built, GuideUnits::Millimetre).steps) {
      told +=
          step.title + QLatin1Char('\n') + step.told().join(QLatin1Char('\n')) + QLatin1Char('\n');
    }
    qsizetype last = -1;
    for (const QString& wanted : patterns) {
      const auto at = told.lastIndexOf(QRegularExpression(wanted));
      EXPECT_GT(at, last) << wanted.toStdString() << " in\n" << told.toStdString();
      last = at;
    }
  };
  expectOrder("gusseted-bag",
              {QStringLiteral("press the seam"), QStringLiteral("Open the tube"),
               QStringLiteral("Close the bottom"), QStringLiteral("Push both sides in")});
  expectOrder("crash-lock-bottom-box",
              {QStringLiteral("Press[^\n]*bottom glue tab"), QStringLiteral("Press[^\n]*back seam"),
               QStringLiteral("the tube opens")});
}

/// One file: well formed but for the doctype, one text for each step, one figure for each step or
/// for those that share a map, as on paper, no script and nothing fetched.
TEST(GuideHtml, IsSelfContainedAndWellFormed) {
  for (const char* id : {"framed-tray", "gable-box", "pillow-box", "partition-insert"}) {
    const BuiltDesign built = standard(**findStyle(id));
    QByteArray html = guideHtml(built, GuideUnits::Both, QStringLiteral("en"));
    EXPECT_TRUE(html.startsWith("<!DOCTYPE html>"));
    EXPECT_FALSE(html.contains("<script"));
    EXPECT_FALSE(html.contains("src="));
    EXPECT_FALSE(html.contains("href="));
    const Guide guide = makeGuide(built);
    const auto parts = static_cast<qsizetype>(guideParts(guide).size());
    EXPECT_EQ(html.count("<h3>"), static_cast<qsizetype>(guide.steps.size()));
    EXPECT_LE(parts, static_cast<qsizetype>(guide.steps.size()));
    EXPECT_EQ(html.count("<svg"), parts + 1);
    EXPECT_EQ(html.count("role=\"img\""), parts + 1);
    EXPECT_FALSE(html.contains(" id=\""));
    html.remove(0, html.indexOf("<html"));
    for (const QByteArray& open :
         {QByteArray("<meta charset=\"utf-8\">"), QByteArray("initial-scale=1\">")}) {
      html.replace(open, QByteArray(open).insert(open.size() - 1, '/'));
    }
    QXmlStreamReader reader(html);
    while (!reader.atEnd()) {
      reader.readNext();
    }
    EXPECT_FALSE(reader.hasError())
        << id << ' ' << reader.errorString().toStdString() << " line " << reader.lineNumber();
  }
}

/// Nothing runs over the edge of a page, and a long title is broken.
TEST(GuidePages, EverythingLiesOnThePage) {
  for (const Style& style : styles()) {
    BuiltDesign built = standard(style);
    built.design.title =
        std::string(300, 'M') + " and more words than a page is wide " + std::string(100, 'w');
    for (const char* paper : {"a4", "letter"}) {
      for (const Drawing& page : guidePages(built, GuideUnits::Both, *findPaper(paper))) {
        for (const PathItem& item : page.paths) {
          for (const Polygon& ring : item.rings) {
            for (const Point& p : ring) {
              EXPECT_TRUE(p.x > 0 && p.y > 0 && p.x < page.width && p.y < page.height) << style.id;
            }
          }
        }
        for (const TextItem& item : page.texts) {
          EXPECT_TRUE(item.at.y > 0 && item.at.y < page.height) << style.id;
        }
      }
    }
  }
}

/// One word tells that a size is rounded, and none that it is exact; rounded by hand.
TEST(GuideLengths, AFinishedSizeIsRoundedToTheRulerWithOneWord) {
  const std::vector<Length> tray{Length::mm(117.34), Length::mm(92.3), Length::mm(27.3)};
  EXPECT_EQ(finishedSize(tray, GuideUnits::Millimetre), QStringLiteral("about 117 × 92 × 27 mm"));
  EXPECT_EQ(finishedSize({Length::mm(117), Length::mm(92)}, GuideUnits::Millimetre),
            QStringLiteral("117 × 92 mm"));
  EXPECT_EQ(finishedSize({Length::inches(4), Length::inches(3)}, GuideUnits::Inch),
            QStringLiteral("4 × 3 in"));
  EXPECT_EQ(finishedSize({Length::mm(101), Length::mm(76)}, GuideUnits::Both),
            QStringLiteral("about 4 × 3 in (101 × 76 mm)"));
  EXPECT_EQ(guideSize(tray, GuideUnits::Millimetre), QStringLiteral("117.34 × 92.3 × 27.3 mm"));
}

TEST(WriteGuide, WritesEachKindAndRefusesOthers) {
  const QTemporaryDir folder;
  const BuiltDesign built = standard(**findStyle("straight-tuck-box"));
  GuideChoices choices;
  choices.paper = *findPaper("a4");
  for (const char* name : {"guide.pdf", "guide.html", "pictures/"}) {
    EXPECT_FALSE(writeGuide(built, folder.filePath(QLatin1String(name)), choices)) << name;
  }
  EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("pictures/guide.txt"))));
  EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("pictures/step-01.png"))));
  EXPECT_TRUE(writeGuide(built, folder.filePath(QStringLiteral("guide.doc")), choices));
  EXPECT_TRUE(writeGuide(built, QStringLiteral("/nowhere/at/all/guide.html"), choices));
}

}  // namespace
}  // namespace creasewright
