#include <QRegularExpression>
#include <algorithm>

#include <gtest/gtest.h>

#include "bridge/stock_words.h"
#include "core/laws/random_design.h"
#include "extras/extra_kind.h"
#include "extras/label_shapes.h"
#include "guide/make_guide.h"
#include "pages/sheet_figure.h"
#include "papers/guide/guide_words.h"
#include "patterns/pattern.h"
#include "styles/registry.h"

// What the guide says of layers, bows, ribbons and colours.
namespace creasewright {
namespace {

Design boxWith(std::initializer_list<const char*> extras) {
  Design design = newDesign("two-piece-box", parseProduct("box:120x90x40mm").value(),
                            cards().front(), Ease::Easy, ToolGrid::millimetre())
                      .value();
  for (const char* kind : extras)
    design.extras.push_back(standardExtra(**findExtraKind(kind), design.card));
  return design;
}

QString toldOf(const BuiltDesign& built, GuideUnits units = GuideUnits::Millimetre) {
  const GuideWords words = wordGuide(makeGuide(built), built, units);
  QStringList all = words.supplies;
  for (const StepWords& step : words.steps) all += QStringList(step.title) + step.told();
  return all.join(QLatin1Char('\n'));
}

TEST(DressingWords, LinesOfALabelAreToldInTheirOrder) {
  for (const int curve : {0, 1, 2, 3}) {
    Design design = boxWith({"label"});
    design.extras[0].parameters.setCount("curve", curve);
    design.extras[0].lines = {"Truffles", "six", "of our own"};
    const QString told = toldOf(build(design).value());
    EXPECT_TRUE(told.contains(QStringLiteral("“Truffles / six / of our own”")))
        << curve << told.toStdString();
  }
}

/// A tag is cut from plum card; its string is not.
TEST(DressingWords, ATagsOwnStringHasNotTheColourOfItsCard) {
  for (const bool tied : {false, true}) {
    Design design = boxWith({tied ? "ribbon" : "tag"});
    design.extras[0].card.colours.face = parseColour("plum").value();
    const QString told = toldOf(build(design).value());
    const QRegularExpression line(QStringLiteral("of ribbon, [^\n]* wide(, plum)?"));
    const QRegularExpressionMatch match = line.match(told);
    ASSERT_TRUE(match.hasMatch()) << told.toStdString();
    EXPECT_EQ(!match.captured(1).isEmpty(), tied) << told.toStdString();
  }
}

TEST(DressingWords, ABowOnALabelIsGluedOntoTheLabel) {
  const BuiltDesign built = build(boxWith({"label", "made-bow"})).value();
  ASSERT_EQ(built.ribbons.size(), 1u);
  const QString told = toldOf(built);
  EXPECT_TRUE(told.contains(QStringLiteral("Glue it onto “label”"))) << told.toStdString();
  Design moved = boxWith({"label", "made-bow"});
  moved.extras[1].parameters.set("across", Length::mm(3));
  const BuiltDesign beside = build(moved).value();
  EXPECT_TRUE(toldOf(beside).contains(QStringLiteral("Glue it onto “label” on “")))
      << toldOf(beside).toStdString();
}

TEST(DressingWords, ALabelOnAMatIsGluedOntoTheMatWhichIsUprightOnlyIfPatterned) {
  Design design = boxWith({"mats", "label"});
  const QString plain = toldOf(build(design).value());
  EXPECT_TRUE(plain.contains(QRegularExpression(QStringLiteral("Glue it onto the middle of “mat"))))
      << plain.toStdString();
  EXPECT_FALSE(plain.contains(QStringLiteral("pattern upright")));
  design.extras[0].card.colours.pattern = usualPaper(**findPattern("leaves"));
  EXPECT_TRUE(toldOf(build(design).value()).contains(QStringLiteral("the pattern upright")));
}

TEST(DressingWords, ASwallowTailHasNotchesAndADividerSlots) {
  Design design = boxWith({"label", "partition"});
  design.extras[0].parameters.setCount("shape", static_cast<int>(LabelShape::Banner));
  const QString told = toldOf(build(design).value());
  EXPECT_TRUE(told.contains(QStringLiteral("Make 4 slanting cuts; two meet in each notch.")))
      << told.toStdString();
  EXPECT_FALSE(told.contains(QStringLiteral("small corner"))) << told.toStdString();
  EXPECT_TRUE(told.contains(QStringLiteral("Cut the slots"))) << told.toStdString();
}

/// Law: letters of waste are named only where every figure of the step shows them.
TEST(DressingWords, LettersThatAreNamedStandInTheFigure) {
  int named = 0;
  int unnamed = 0;
  for (const Style& style : styles()) {
    const auto built = build(testing::withItsExtras(style));
    if (!built) continue;
    const Guide guide = makeGuide(*built);
    const GuideWords words = wordGuide(guide, *built, GuideUnits::Millimetre);
    for (std::size_t i = 0; i < guide.steps.size(); ++i) {
      const Step& step = guide.steps[i];
      if (step.waste.empty()) continue;
      const QString told = words.steps[i].sentences.join(QLatin1Char(' '));
      const bool names =
          told.contains(QRegularExpression(QStringLiteral("pieces? [A-Z]+( to [A-Z]+)?\\.")));
      ++(names ? named : unnamed);
      if (!names) continue;
      const BuiltPiece& piece = built->pieces[static_cast<std::size_t>(step.piece)];
      const Drawing figure = sheetFigure(piece, step, {60, 40});
      for (const std::string& letter : step.waste)
        EXPECT_TRUE(std::ranges::any_of(
            figure.texts, [&](const TextItem& text) { return text.label.literal == letter; }))
            << style.id << ' ' << piece.name << ' ' << letter;
    }
  }
  EXPECT_GT(named, 20);
  EXPECT_GT(unnamed, 0);
}

TEST(DressingWords, RibbonsAndCardAreToldWithTheirColours) {
  Design design = boxWith({"ribbon"});
  design.card.colours = parseCardColours("sage/cream").value();
  design.extras[0].card.colours.face = parseColour("plum").value();
  const BuiltDesign built = build(design).value();
  const GuideWords words = wordGuide(makeGuide(built), built, GuideUnits::Millimetre);
  const auto ribbon = std::ranges::find_if(
      words.supplies, [](const QString& line) { return line.contains(QLatin1String("ribbon")); });
  ASSERT_NE(ribbon, words.supplies.end());
  EXPECT_TRUE(ribbon->endsWith(QLatin1String(", plum"))) << ribbon->toStdString();
  EXPECT_TRUE(words.supplies.front().contains(QLatin1String("sage, back cream")));
  EXPECT_TRUE(words.steps.front().sentences.front().contains(QLatin1String("sage, back cream")));
  EXPECT_TRUE(
      toldOf(built).contains(QRegularExpression(QStringLiteral("Cut .* ribbon, .*, plum"))));
}

/// Every ink of a pattern is named once, whether it is the pattern's own or chosen.
TEST(DressingWords, APaperIsToldWithAllThatItIsPrintedIn) {
  PaperPattern paper = usualPaper(**findPattern("leaves"));
  paper.colours = {parseColour("teal").value(), parseColour("mint").value()};
  const std::size_t inks = coloursOf(paper).size();
  ASSERT_GT(inks, 2u);
  const QString name = paperName(paper);
  EXPECT_TRUE(name.contains(QLatin1String("teal, mint, "))) << name.toStdString();
  EXPECT_EQ(name.count(QLatin1Char(',')) + 1, static_cast<qsizetype>(inks)) << name.toStdString();
  EXPECT_TRUE(paperName(usualPaper(**findPattern("dots"))).contains(QLatin1String(" in ")));
}

}  // namespace
}  // namespace creasewright
