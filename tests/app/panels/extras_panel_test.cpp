#include "panels/extras_panel.h"

#include <QAction>
#include <QComboBox>
#include <QCoreApplication>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QPlainTextEdit>
#include <QStandardPaths>
#include <QToolButton>

#include <gtest/gtest.h>

#include "bridge/style_text.h"
#include "commands/edits.h"
#include "extras/layer_stack.h"
#include "output/write_bytes.h"
#include "own_stock/stock_store.h"
#include "panels/checks_panel.h"
#include "panels/extra_row.h"
#include "panels/label_fields.h"
#include "panels/measures_panel.h"
#include "panels/punch_box.h"
#include "widgets/length_edit.h"
#include "widgets/pattern_picker.h"

namespace creasewright {
namespace {

class ExtrasPanelTest : public ::testing::Test {
 protected:
  ExtrasPanelTest() : panel_(session_) {
    session_.start(*newDesign("straight-tuck-box", *parseProduct("box:60x35x120mm"), cards()[0],
                              Ease::Easy, ToolGrid::millimetre()),
                   {});
  }

  void TearDown() override { QFile::remove(punches()); }

  static QString punches() {
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) +
           QStringLiteral("/stock/punches.csv");
  }

  void add(std::string_view kind) {
    for (auto* button : panel_.findChildren<QToolButton*>())
      if (button->menu() != nullptr)
        for (QAction* action : button->menu()->actions())
          if (action->text() == extraTitle(kind)) action->trigger();
  }

  DesignSession session_;
  ExtrasPanel panel_;
};

TEST_F(ExtrasPanelTest, AddsWhatTheMenuNamesAndUndoesIt) {
  add("belly-band");
  add("label");
  ASSERT_EQ(session_.design().extras.size(), 2U);
  EXPECT_EQ(session_.design().extras[1].kind, "label");
  EXPECT_EQ(session_.built().pieces.size(), 4U);  // box, band, mat layer, label
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  EXPECT_EQ(panel_.findChildren<ExtraRow*>().size(), 2);
  session_.history().undo();
  EXPECT_EQ(session_.design().extras.size(), 1U);
}

TEST_F(ExtrasPanelTest, TypingATextIsOneStep) {
  add("label");
  const int before = session_.history().count();
  auto* text = panel_.findChild<QPlainTextEdit*>();
  ASSERT_NE(text, nullptr);
  text->setPlainText("Plum");
  text->setPlainText("Plum jam\nfrom the mill");
  EXPECT_EQ(session_.history().count(), before + 1);
  const std::vector<std::string> lines{"Plum jam", "from the mill"};
  EXPECT_EQ(session_.design().extras[0].lines, lines);
}

TEST_F(ExtrasPanelTest, AFaceIsChosenAmongThoseThatShow) {
  add("label");
  bool chosen = false;
  for (auto* box : panel_.findChildren<QComboBox*>()) {
    const int row = box->findData("box:front");
    if (row < 0) continue;
    box->setCurrentIndex(row);
    emit box->activated(row);
    chosen = true;
  }
  ASSERT_TRUE(chosen);
  EXPECT_EQ(session_.design().extras[0].face, "box:front");
  EXPECT_TRUE(session_.problems().empty());
}

TEST_F(ExtrasPanelTest, AnotherStyleKeepsTheExtrasAndFindsTheirFaceAnew) {
  add("label");
  std::vector<Extra> extras = session_.design().extras;
  extras[0].face = "box:front";
  changeExtras(session_, extras, {});
  changeStyle(session_, "two-piece-box");
  ASSERT_EQ(session_.design().extras.size(), 1U);
  EXPECT_EQ(session_.design().extras[0].face, "");
  EXPECT_TRUE(session_.problems().empty());
}

/// How words are set is asked where there are words, and undone like all else.
TEST_F(ExtrasPanelTest, WordsAreSetAsWished) {
  add("label");
  panel_.show();
  const auto box = [&](const char* name) -> QComboBox* {
    for (auto* each : panel_.findChildren<QComboBox*>())
      if (each->accessibleName() == QLatin1String(name)) return each;
    return nullptr;
  };
  ASSERT_NE(box("Font"), nullptr);
  EXPECT_FALSE(box("Font")->isVisible());
  panel_.findChild<QPlainTextEdit*>()->setPlainText("Plum jam\nNo. 7");
  ASSERT_TRUE(box("Font")->isVisible());
  emit box("Font")->activated(1);
  emit box("Curve")->activated(3);
  const Parameters& set = session_.design().extras[0].parameters;
  EXPECT_EQ(set.count("font"), 1);
  EXPECT_EQ(set.count("curve"), 3);
  EXPECT_EQ(session_.built().pieces.back().net.inscriptions.at(1).arc->lower, true);
  session_.history().undo();
  EXPECT_EQ(session_.design().extras[0].parameters.count("curve"), 0);
}

/// A punch of the person's own list gives a layer its shape and size.
TEST_F(ExtrasPanelTest, APunchIsChosenFromThoseOwned) {
  ASSERT_FALSE(savePunchCsv("shape,width,height\ncircle,25 mm,\nscalloped circle,1 3/8 in,\n"));
  add("label");
  auto* punches = panel_.findChild<PunchBox*>();
  ASSERT_NE(punches, nullptr);
  ASSERT_EQ(punches->count(), 4);  // none, these two, and one of its size
  EXPECT_EQ(punches->currentIndex(), 0);
  EXPECT_EQ(punches->itemText(1), QStringLiteral("Circle, 25 mm"));
  emit punches->activated(2);
  const Extra& label = session_.design().extras[0];
  EXPECT_TRUE(label.parameters.flag("punched"));
  EXPECT_EQ(label.parameters.length("width"), Length::inches(11, 8));
  EXPECT_EQ(static_cast<LabelShape>(label.parameters.count("shape")), LabelShape::ScallopedCircle);
  EXPECT_EQ(panel_.findChild<PunchBox*>()->currentIndex(), 2);
  emit panel_.findChild<PunchBox*>()->activated(0);
  EXPECT_FALSE(session_.design().extras[0].parameters.flag("punched"));
}

/// Without a list too something may be punched as it is.
TEST_F(ExtrasPanelTest, APunchOfItsSizeNeedsNoList) {
  ASSERT_FALSE(savePunchCsv("shape,width,height\n"));
  add("label");
  auto* punches = panel_.findChild<PunchBox*>();
  ASSERT_EQ(punches->count(), 2);
  const Parameters before = session_.design().extras[0].parameters;
  emit punches->activated(1);
  const Parameters& after = session_.design().extras[0].parameters;
  EXPECT_TRUE(after.flag("punched"));
  EXPECT_EQ(after.length("width"), before.length("width"));
  EXPECT_EQ(after.count("shape"), before.count("shape"));
  EXPECT_EQ(panel_.findChild<PunchBox*>()->currentIndex(), 1);
}

/// A layer asks for its punch, words and paper as the label does, and each goes into the layer.
TEST_F(ExtrasPanelTest, ALayerHasTheFieldsOfALabel) {
  add("label");
  std::vector<Extra> extras = session_.design().extras;
  extras[0].layers = {standardLayer(extras[0].card, session_.design().grid)};
  changeExtras(session_, extras, QStringLiteral("layer"));
  panel_.show();
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);  // rows before
  const auto fields = panel_.findChildren<LabelFields*>();
  ASSERT_EQ(fields.size(), 2);
  ASSERT_EQ(panel_.findChildren<PatternPicker*>().size(), 2);
  fields[1]->findChild<QPlainTextEdit*>()->setPlainText(QStringLiteral("Soap"));
  for (auto* box : fields[1]->findChildren<QComboBox*>())
    if (box->accessibleName() == QStringLiteral("Font")) emit box->activated(1);
  const ExtraLayer& layer = session_.design().extras[0].layers[0];
  EXPECT_EQ(layer.lines, std::vector<std::string>{"Soap"});
  EXPECT_EQ(layer.parameters.count("font"), 1);
  EXPECT_TRUE(session_.design().extras[0].lines.empty());
  EXPECT_EQ(session_.design().extras[0].parameters.count("font"), 0);
  emit panel_.findChildren<PatternPicker*>().at(1)->patternPicked(
      PaperPattern{"dots", Length::mm(8), 0, {}}, false, {});
  EXPECT_TRUE(session_.design().extras[0].layers[0].card.colours.pattern.has_value());
  EXPECT_FALSE(session_.design().extras[0].card.colours.pattern.has_value());
}

/// The thickness of foam is asked for where there is foam.
TEST_F(ExtrasPanelTest, FoamIsAskedForWhereItHolds) {
  add("label");
  panel_.show();
  const auto foam = [&]() -> const QWidget* {
    for (const auto* each : panel_.findChildren<LengthEdit*>())
      if (each->accessibleName() == QStringLiteral("Foam")) return each;
    return nullptr;
  };
  ASSERT_NE(foam(), nullptr);
  EXPECT_FALSE(foam()->isVisible());
  std::vector<Extra> extras = session_.design().extras;
  extras[0].parameters.setCount("hold", 2);
  changeExtras(session_, extras, QStringLiteral("foam"));
  EXPECT_TRUE(foam()->isVisible());
}

/// A list of punches that cannot be read is one sentence beside what is punched.
TEST_F(ExtrasPanelTest, AnUnreadableListOfPunchesIsTold) {
  ASSERT_FALSE(savePunchCsv("shape,width,height\ncircle,25 mm,\n"));
  ASSERT_FALSE(writeBytes(punches(), QByteArray("shape,width\ncloud,1 in\n")));
  add("label");
  std::vector<Extra> extras = session_.design().extras;
  extras[0].parameters.setCount("punched", 1);
  changeExtras(session_, extras, QStringLiteral("Label"));
  int told = 0;
  for (const QLabel* label : panel_.findChildren<QLabel*>())
    told += label->text().contains(QStringLiteral("cloud")) ? 1 : 0;
  EXPECT_EQ(told, 1);
}

// The box has a width too, which is not meant.
TEST_F(ExtrasPanelTest, AMeasureThatIsTooSmallIsToldInItsOwnRowOnly) {
  changeStyle(session_, "two-piece-box");
  MeasuresPanel measures(session_);
  ChecksPanel checks(session_);
  bool asked = false;
  QObject::connect(&checks, &ChecksPanel::parameterAsked, [&] { asked = true; });
  ASSERT_TRUE(session_.design().parameters.has("width"));
  add("tag");
  std::vector<Extra> extras = session_.design().extras;
  for (const char* side : {"width", "height"}) extras[0].parameters.set(side, Length::mm(9));
  changeExtras(session_, extras, QStringLiteral("Tag"));
  const auto timesTold = [](const QWidget& place) {
    int told = 0;
    for (const QLabel* label : place.findChildren<QLabel*>())
      told += label->text().contains(QStringLiteral("“Width” of the extra “Tag”")) ? 1 : 0;
    return told;
  };
  EXPECT_EQ(timesTold(panel_), 1);
  EXPECT_EQ(timesTold(measures), 0);
  ASSERT_GT(checks.list().count(), 0);
  for (int row = 0; row < checks.list().count(); ++row) checks.list().setCurrentRow(row);
  EXPECT_FALSE(asked);
}

}  // namespace
}  // namespace creasewright
