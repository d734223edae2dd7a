#include <QRegularExpression>
#include <algorithm>

#include <gtest/gtest.h>

#include "bridge/label_text.h"
#include "bridge/text.h"
#include "core/laws/random_design.h"
#include "document/build.h"
#include "guide/guide_time.h"
#include "guide/make_guide.h"
#include "papers/guide/measure_card.h"
#include "papers/guide/readers_guide.h"
#include "papers/guide/talk_sheet.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr double kSheetMargin = 12;  // mm

/// All words of a page, in the order in which they were set.
QStringList wordsOf(const Drawing& page) {
  const Wording wording = wordingIn(Unit::Inch);
  QStringList words;
  for (const TextItem& item : page.texts) words.append(text(wording(item.label)));
  return words;
}

void expectOnPage(const Drawing& page) {
  for (const PathItem& path : page.paths)
    for (const Polygon& ring : path.rings)
      for (const Point& p : ring)
        ASSERT_TRUE(p.x > kSheetMargin - 1 && p.x < page.width - kSheetMargin + 1 &&
                    p.y > kSheetMargin - 1 && p.y < page.height - kSheetMargin + 1)
            << p.x << ' ' << p.y;
  for (const TextItem& item : page.texts) {
    EXPECT_GT(item.at.x, kSheetMargin - 1) << item.label.literal;
    EXPECT_LT(item.at.x, page.width - kSheetMargin + 1) << item.label.literal;
    EXPECT_GT(item.at.y, kSheetMargin - 1) << item.label.literal;
  }
}

TEST(MeasureCard, HasEveryBlankAndEveryReadingOnOnePage) {
  std::size_t readings = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    for (const Design& design : {testing::asItComes(style), testing::withItsExtras(style)}) {
      const auto built = build(design);
      ASSERT_TRUE(built);
      const Drawing card = measureCard(*built, GuideUnits::Inch, *findPaper("letter"));
      EXPECT_NEAR(card.height, 279.4, 1e-6);
      expectOnPage(card);
      const QStringList words = wordsOf(card);
      const QString all = words.join(QLatin1Char(' '));
      for (const BuiltPiece& piece : built->pieces) {
        const Length width = Length::mm(piece.flat.width);
        // That a size is rounded is said once for all its sides.
        const QString number = lengthText(width, Unit::Inch, false).remove(QLatin1Char('~'));
        EXPECT_TRUE(all.contains(number)) << piece.name;
        for (const ScoreSetup& setup : piece.scorePlan.setups)
          for (const ScoreReading& reading : setup.readings) {
            if (reading.run != ScoreRun::Full) continue;
            EXPECT_TRUE(words.contains(lengthText(reading.at, Unit::Inch, false)))
                << piece.name << ' ' << lengthText(reading.at, Unit::Inch).toStdString();
            ++readings;
          }
      }
    }
  }
  EXPECT_GT(readings, 300U);
}

int minutesOf(const QString& clock) {
  static const QRegularExpression form(QStringLiteral("^(\\d+):(\\d\\d)$"));
  const auto match = form.match(clock);
  return match.hasMatch() ? 60 * match.captured(1).toInt() + match.captured(2).toInt() : -1;
}

TEST(TalkSheet, GoesThroughAllStepsMinuteByMinute) {
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const auto built = build(testing::asItComes(style));
    ASSERT_TRUE(built);
    const Guide guide = makeGuide(*built);
    const GuideWords told = wordGuide(guide, *built, GuideUnits::Inch);
    QString all;
    std::vector<int> minutes;
    for (const GuideSize size : {GuideSize::Standard, GuideSize::Large}) {
      all.clear();
      minutes.clear();
      for (const Drawing& page :
           talkSheet(*built, GuideUnits::Inch, *findPaper("a4"), {size, false})) {
        expectOnPage(page);
        for (const QString& words : wordsOf(page)) {
          if (minutesOf(words) >= 0) minutes.push_back(minutesOf(words));
          all += QString(words).remove(QLatin1Char(' '));
        }
      }
      // The welcome, every step and the end.
      EXPECT_EQ(minutes.size(), guide.steps.size() + 2);
      EXPECT_TRUE(std::ranges::is_sorted(minutes));
      EXPECT_EQ(minutes.front(), 0);
      EXPECT_EQ(minutes.back(), 5 + minutesFor(guide));
      qsizetype at = 0;
      for (std::size_t i = 0; i < told.steps.size(); ++i) {
        QString title = QStringLiteral("%1.%2").arg(i + 1).arg(told.steps[i].title);
        at = all.indexOf(title.remove(QLatin1Char(' ')), at);
        ASSERT_GE(at, 0) << title.toStdString();
      }
    }
  }
}

/// Words without their spaces, as lines may break anywhere.
QString run(const std::vector<Drawing>& pages) {
  QString all;
  for (const Drawing& page : pages) all += wordsOf(page).join(QString());
  return all.remove(QLatin1Char(' '));
}

/// A design made anew for other readers says what is different on every kind of sheet.
TEST(RefitNote, StandsOnCardAndTalkSheetToo) {
  std::size_t lines = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const auto original = build(testing::asItComes(style));
    ASSERT_TRUE(original);
    GuideChoices choices;
    const auto guide = guideFor(Readers::Metric, *original, choices);
    if (!guide) continue;  // its first error stands against it
    choices = guide->choices;
    for (const GuideKind kind : {GuideKind::Steps, GuideKind::Measures, GuideKind::Talk}) {
      choices.kind = kind;
      const std::vector<Drawing> pages = guideSheets(guide->built, choices);
      for (const Drawing& page : pages) expectOnPage(page);
      const QString all = run(pages);
      for (QString line : choices.note.lines + QStringList{choices.note.heading}) {
        if (choices.note.lines.isEmpty()) continue;
        EXPECT_TRUE(all.contains(line.remove(QLatin1Char(' ')))) << line.toStdString();
        ++lines;
      }
    }
  }
  EXPECT_GT(lines, 100U);
}

}  // namespace
}  // namespace creasewright
