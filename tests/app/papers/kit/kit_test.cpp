#include <QDir>
#include <QTemporaryDir>
#include <set>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "bridge/label_text.h"
#include "bridge/text.h"
#include "core/kits/plan_of.h"
#include "extras/extra_kind.h"
#include "fit/card_pattern.h"
#include "kits/layout_drawing.h"
#include "output/pdf_export.h"
#include "papers/guide/guide_words.h"
#include "papers/kit/kit_csv.h"
#include "papers/kit/kit_pages.h"
#include "papers/kit/kit_words.h"
#include "papers/kit/machine_files.h"
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
    EXPECT_EQ(line.count(','), 13) << line.toStdString();
  }
}

/// A gift of three colours, a pattern and a plum ribbon.
ClassKit colouredKit() {
  ClassKit kit = kitOf({"two-piece-box"});
  Design& box = kit.items[0].design;
  box.card.colours = *parseCardColours("sage/cream");
  Extra band = standardExtra(**findExtraKind("belly-band"), box.card);
  band.card.colours = *withPattern({}, "leaves:scale=20mm");
  Extra ribbon = standardExtra(**findExtraKind("ribbon"), box.card);
  ribbon.card.colours = *parseCardColours("plum");
  Extra label = standardExtra(**findExtraKind("label"), box.card);
  label.card.colours = *parseCardColours("plum");
  box.extras = {band, label, ribbon};
  return kit;
}

/// Colours are separate cards: which of them is in the hand stands at each layout and in the files.
TEST(KitWords, EveryLayoutNamesItsCard) {
  const auto plan = testing::planOf(colouredKit());
  ASSERT_TRUE(plan);
  ASSERT_EQ(plan->cards.size(), 3U);
  QString all;
  for (const CardPlan& card : plan->cards)
    for (const Layout& layout : card.plan.layouts)
      all += wordLayout(1, layout, card, Unit::Millimetre).card + QLatin1Char('\n');
  for (const char* words : {"sage, back cream", "Leaves 20 mm", "plum"})
    EXPECT_TRUE(all.contains(QLatin1String(words))) << words << all.toStdString();
  QString pages;
  std::set<std::string> tints;
  for (const Drawing& page : kitPages(*plan, Unit::Millimetre, *findPaper("a4"))) {
    for (const TextItem& item : page.texts) pages += text(item.label.literal) + QLatin1Char('\n');
    for (const PathItem& item : page.paths)
      if (item.role == Role::Face && item.colour && item.surface == Surface::Outside &&
          item.light == 1)
        tints.insert(hexText(*item.colour));
  }
  for (const CardPlan& card : plan->cards)
    EXPECT_TRUE(tints.contains(hexText(*lookOf(card.card().colours).tint)));
  EXPECT_TRUE(pages.contains(QLatin1String("Card: =card, sage, back cream")))
      << pages.toStdString();
}

TEST(KitFiles, TellColoursPatternsRibbonAndFoam) {
  const auto plan = testing::planOf(colouredKit());
  ASSERT_TRUE(plan);
  const QByteArray table = kitCsv(*plan);
  for (const char* words :
       {"\"sage/cream\",\r\n", "\"plain\",\"leaves:scale=20 mm\"", "\"plum\",\r\n"})
    EXPECT_TRUE(table.contains(words)) << words << table.toStdString();
  const auto json = nlohmann::json::parse(kitJson(*plan));
  ASSERT_EQ(json["cards"].size(), 3U);
  EXPECT_EQ(json["cards"][0]["colour"], "sage/cream");
  EXPECT_EQ(json["cards"][0]["back"], "#F6ECD0");
  EXPECT_EQ(json["cards"][1]["pattern"]["id"], "leaves");
  ASSERT_EQ(json["ribbon"].size(), 1U);
  EXPECT_EQ(json["ribbon"][0]["colour"], "plum");
  EXPECT_EQ(json["ribbon"][0]["pieces"], plan->kit().sets());
  EXPECT_TRUE(json["foam"].is_array());
  EXPECT_TRUE(shoppingLines(*plan, Unit::Millimetre)
                  .join(QLatin1Char('\n'))
                  .contains(QLatin1String("wide, plum: ")));
}

/// One instruction says how a sheet of directed paper is laid.
TEST(KitWords, APatternedSheetIsLaidByOneInstruction) {
  const auto plan = testing::planOf(colouredKit());
  ASSERT_TRUE(plan);
  for (const CardPlan& card : plan->cards)
    for (const Layout& layout : card.plan.layouts) {
      const LayoutWords words = wordLayout(1, layout, card, Unit::Millimetre);
      QString all = words.notes.join(QLatin1Char(' '));
      for (const LayoutWords::Cut& cut : words.cuts) all += QLatin1Char(' ') + cut.sentence;
      EXPECT_LE(all.count(QLatin1String("Lay the sheet")), 1) << all.toStdString();
      if (card.card().colours.pattern) {
        EXPECT_TRUE(all.contains(QLatin1String("pattern"))) << all.toStdString();
      }
    }
}

/// What is punched is told by its punch: in the bag, on its label, on the tables.
TEST(KitWords, PunchesAreNamedAsTheirOwnerCallsThem) {
  ClassKit kit = colouredKit();
  std::vector<Extra>& extras = kit.items[0].design.extras;
  extras = {extras[1]};  // beside band and ribbon is no room for it
  Extra& label = extras[0];
  label.parameters.setCount("punched", 1);
  label.parameters.setCount("shape", static_cast<int>(LabelShape::Circle));
  label.parameters.set("width", Length::inches(1));
  const QString circle = lengthText(Length::inches(1), Unit::Inch) + QStringLiteral(" circle");
  const auto plan = testing::planOf(kit);
  ASSERT_TRUE(plan);
  EXPECT_TRUE(packingLines(*plan, Unit::Millimetre)
                  .join(QLatin1Char('\n'))
                  .contains(QStringLiteral("31.4 × 31.4 mm, for the %1 punch").arg(circle)))
      << packingLines(*plan, Unit::Millimetre).join(QLatin1Char('\n')).toStdString();
  EXPECT_TRUE(teacherLines(*plan, Unit::Millimetre)
                  .join(QLatin1Char('\n'))
                  .contains(QStringLiteral("of punches (%1)").arg(circle)))
      << teacherLines(*plan, Unit::Millimetre).join(QLatin1Char('\n')).toStdString();
  const GuideWords guide = wordGuide(plan->built->items[0]->guide, plan->built->items[0]->design,
                                     GuideUnits::Millimetre);
  EXPECT_TRUE(
      guide.tools.join(QLatin1Char(' ')).contains(QStringLiteral("Punches: %1 (").arg(circle)));
  QString steps;
  for (const StepWords& step : guide.steps) steps += step.sentences.join(QLatin1Char(' '));
  EXPECT_TRUE(steps.contains(QStringLiteral("with your %1 punch").arg(circle)))
      << steps.toStdString();
}

/// Cards that differ in colour alone have files of their own names, and lines of theirs.
TEST(MachineFiles, AreNamedByTheirColours) {
  const auto built = buildKit(colouredKit());
  ASSERT_TRUE(built);
  const QTemporaryDir folder;
  MachineChoices choices;
  choices.width = choices.height = Length::inches(12);
  choices.paper = *findPaper("a4");
  const QString out = folder.filePath(QStringLiteral("m"));
  ASSERT_FALSE(writeMachineFolder(*built, out, choices));
  const QString files = QDir(out).entryList(QDir::Files).join(QLatin1Char(' '));
  for (const char* start : {"c-sage-cream-carrier-1", "c-leaves-carrier-1", "c-plum-carrier-1"})
    EXPECT_TRUE(files.contains(QLatin1String(start))) << files.toStdString();
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
