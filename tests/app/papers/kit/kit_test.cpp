#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "bridge/label_text.h"
#include "core/kits/plan_of.h"
#include "output/pdf_export.h"
#include "papers/kit/kit_csv.h"
#include "papers/kit/kit_pages.h"
#include "papers/kit/kit_words.h"
#include "papers/kit/write_kit.h"

namespace creasewright {
namespace {

ClassKit kitOf(std::initializer_list<const char*> styles) {
  ClassKit kit;
  kit.title = "Soap evening";
  kit.stock = {{"12x12", Length::inches(12), Length::inches(12)},
               {"tabloid", Length::inches(11), Length::inches(17)}};
  for (const char* style : styles) {
    kit.items.push_back(
        {*newDesign(style, *parseProduct("box:60x40x25mm"), {"c", "=card", Length::mm(0.3), 0},
                    Ease::Easy, ToolGrid::sixteenthInch()),
         1});
  }
  return kit;
}

/// One line for each cut, in order; every blank and layout is named.
TEST(KitWords, EveryCutOfEveryLayoutIsTold) {
  const ClassKit kit = kitOf({"two-piece-box", "belly-band", "pillow-box"});
  const auto plan = testing::planOf(kit);
  ASSERT_TRUE(plan);
  int number = 0;
  for (const CardPlan& card : plan->cards) {
    for (const Layout& layout : card.plan.layouts) {
      const LayoutWords words = wordLayout(++number, layout, card, Unit::Inch);
      EXPECT_EQ(words.cuts.size(), trimSteps(layout).size());
      EXPECT_FALSE(words.blanks.isEmpty());
      for (const LayoutWords::Cut& cut : words.cuts) {
        EXPECT_FALSE(cut.sentence.contains(QLatin1Char('%'))) << cut.sentence.toStdString();
      }
    }
  }
  EXPECT_EQ(packingLines(*plan, Unit::Inch).size(), 4);
  EXPECT_FALSE(shoppingLines(*plan, Unit::Inch).isEmpty());
  EXPECT_TRUE(sheetsSentence(*plan).contains(QString::number(plan->sheets)));
}

TEST(KitPages, EverythingLiesOnThePage) {
  ClassKit kit = kitOf({"two-piece-box", "belly-band", "envelope", "wedge-box"});
  kit.takers = 40;
  kit.title = std::string(200, 'M');
  const auto planned = testing::planOf(kit);
  ASSERT_TRUE(planned);
  KitPlan plan = *planned;
  plan.findings = KitFindings{.oneMore = OneMore{1, 0}};
  for (const Drawing& page : kitPages(plan, Unit::Millimetre, *findPaper("a4"))) {
    for (const PathItem& item : page.paths) {
      for (const Polygon& ring : item.rings) {
        for (const Point& p : ring) {
          EXPECT_TRUE(p.x > 0 && p.y > 0 && p.x < page.width && p.y < page.height);
        }
      }
    }
    for (const TextItem& item : page.texts) {
      EXPECT_TRUE(item.at.y > 0 && item.at.y < page.height);
    }
  }
}

TEST(KitCsv, QuotesTextsAndDisarmsFormulas) {
  const ClassKit kit = kitOf({"belly-band"});
  const auto plan = testing::planOf(kit);
  ASSERT_TRUE(plan);
  const QByteArray table = kitCsv(*plan);
  EXPECT_TRUE(table.contains("\"'=card\""));
  for (const QByteArray& line : table.trimmed().split('\n')) {
    EXPECT_EQ(line.count(','), 11) << line.toStdString();
  }
}

/// A plan that no planner would make is written as it is: nothing plans again on the way to a file.
TEST(WriteKit, WritesThePlanItIsGiven) {
  const QTemporaryDir folder;
  KitPlan plan = withFindings(testing::planOf(kitOf({"two-piece-box", "belly-band"})).value());
  Layout& layout = plan.cards.at(0).plan.layouts.at(0);
  layout.count += 300;
  plan.sheets += 300;
  plan.cards[0].plan.sheets += 300;
  plan.findings->oneMore = OneMore{77, 0, true};
  KitChoices choices;
  choices.paper = *findPaper("a4");
  const auto written = [&](const char* name) {
    const QString path = folder.filePath(QString::fromLatin1(name));
    EXPECT_FALSE(writeKitPlan(plan, path, choices)) << name;
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name;
    return file.readAll();
  };
  EXPECT_TRUE(written("k.csv").contains(",1," + QByteArray::number(layout.count) + ","));
  const QByteArray json = written("k.json");
  EXPECT_TRUE(json.contains("\"count\": " + QByteArray::number(layout.count)));
  EXPECT_TRUE(json.contains("\"sheets\": 77"));
  const auto pages = renderPdf(kitPages(plan, choices.unit, choices.paper), wordingIn(choices.unit),
                               {kitTitle(plan.kit()), choices.now});
  ASSERT_TRUE(pages);
  EXPECT_EQ(written("k.pdf"), *pages);
}

TEST(WriteKit, WritesEachKindAndRefusesOthers) {
  const QTemporaryDir folder;
  const ClassKit kit = kitOf({"belly-band"});
  KitChoices choices;
  choices.paper = *findPaper("a4");
  const auto plan = testing::planOf(kit);
  ASSERT_TRUE(plan);
  for (const QString& ending : kitEndings()) {
    EXPECT_FALSE(writeKitPlan(*plan, folder.filePath(QStringLiteral("k.") + ending), choices))
        << ending.toStdString();
  }
  EXPECT_TRUE(writeKitPlan(*plan, folder.filePath(QStringLiteral("k.doc")), choices));
  EXPECT_FALSE(QFile::exists(folder.filePath(QStringLiteral("k.doc"))));
}

}  // namespace
}  // namespace creasewright
