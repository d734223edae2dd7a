#include "panels/card_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QMenu>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "patterns/pattern.h"
#include "widgets/colour_button.h"
#include "widgets/length_edit.h"
#include "widgets/pattern_picker.h"

namespace creasewright {
namespace {

QString shown(const CardPanel& panel) { return panel.findChild<QComboBox*>()->currentText(); }

TEST(CardPanel, OnlyACardKnownByItsThicknessIsMeasuredByYou) {
  DesignSession session;
  CardPanel panel(session);
  EXPECT_EQ(shown(panel), "300 g/m\u00B2 card") << "what a new design takes stands on the list";
  for (const auto& [id, name] : std::vector<std::pair<const char*, QString>>{
           {"300gsm", "300 g/m\u00B2 card"},  // weighs and measures what the listed card does
           {"cover-80lb", "80 lb cover"},
           {"310gsm", "310 g/m\u00B2"},
           {"11pt", "11 pt"},
           {"0.33mm", "Measured by you"}}) {
    changeCard(session, findCard(id).value());
    EXPECT_EQ(shown(panel), name) << id;
  }
}

TEST(CardPanel, ATypedThicknessIsMeasuredByYou) {
  DesignSession session;
  CardPanel panel(session);
  auto* caliper = panel.findChild<LengthEdit*>();
  caliper->selectAll();
  QTest::keyClicks(caliper, "0.33");
  QTest::keyClick(caliper, Qt::Key_Return);
  EXPECT_EQ(shown(panel), "Measured by you");
  EXPECT_EQ(session.design().card.caliper, Length::mm(0.33));
}

/// Picks a colour of the button's menu by its name.
void pick(ColourButton& button, const QString& name) {
  emit button.menu()->aboutToShow();
  for (QAction* action : button.menu()->actions())
    if (action->text() == name) return action->trigger();
  ADD_FAILURE() << "no colour " << name.toStdString();
}

TEST(CardPanel, ColoursArePickedKeptWithAnotherCardAndUndone) {
  DesignSession session;
  CardPanel panel(session);
  const auto buttons = panel.findChildren<ColourButton*>();
  ASSERT_EQ(buttons.size(), 2);
  pick(*buttons[0], "sage");
  pick(*buttons[1], "cream");
  const CardColours wanted = *parseCardColours("sage/cream");
  EXPECT_EQ(session.design().card.colours, wanted);
  auto* stock = panel.findChild<QComboBox*>();
  emit stock->activated(1);
  EXPECT_EQ(session.design().card.id, cards()[1].id);
  auto* caliper = panel.findChild<LengthEdit*>();
  caliper->selectAll();
  QTest::keyClicks(caliper, "0.33");
  QTest::keyClick(caliper, Qt::Key_Return);
  EXPECT_EQ(session.design().card.colours, wanted);
  pick(*buttons[1], "As outside");
  EXPECT_EQ(session.design().card.colours, (CardColours{wanted.face, {}}));
  session.history().undo();
  EXPECT_EQ(buttons[1]->text(), "cream");
  EXPECT_EQ(session.design().card.colours, wanted);
}

void pickPattern(PatternPicker& picker, const QString& name) {
  auto* button = picker.findChild<QToolButton*>(QString(), Qt::FindDirectChildrenOnly);
  emit button->menu()->aboutToShow();
  for (QAction* action : button->menu()->actions())
    if (action->text() == name) return action->trigger();
  ADD_FAILURE() << "no pattern " << name.toStdString();
}

TEST(CardPanel, APatternIsChosenSetAndUndoneStepByStep) {
  DesignSession session;
  CardPanel panel(session);
  auto* picker = panel.findChild<PatternPicker*>();
  ASSERT_NE(picker, nullptr);
  const auto pattern = [&] { return session.design().card.colours.pattern; };
  pickPattern(*picker, "Dots");
  ASSERT_TRUE(pattern());
  EXPECT_EQ(*pattern(), usualPaper(*patternCalled("dots")));
  auto* scale = picker->findChild<LengthEdit*>();
  scale->selectAll();
  QTest::keyClicks(scale, "9 mm");
  QTest::keyClick(scale, Qt::Key_Return);
  EXPECT_EQ(pattern()->scale, mm(9));
  scale->selectAll();
  QTest::keyClicks(scale, "900 mm");
  QTest::keyClick(scale, Qt::Key_Return);
  EXPECT_EQ(pattern()->scale, mm(9)) << "beyond any pattern";
  picker->findChild<QSpinBox*>()->setValue(30);
  EXPECT_EQ(pattern()->turn, 30);
  const auto colours = picker->findChildren<ColourButton*>();
  ASSERT_EQ(colours.size(), 3);
  pick(*colours[0], "sage");
  ASSERT_EQ(pattern()->colours.size(), 3U);
  EXPECT_EQ(pattern()->colours[0], *parseColour("sage"));
  auto* side = picker->findChild<QComboBox*>();
  side->setCurrentIndex(1);
  emit side->activated(1);
  EXPECT_TRUE(session.design().card.colours.patternBehind);
  // One step each: side, colour, turn, repeat, pattern.
  session.history().undo();
  EXPECT_FALSE(session.design().card.colours.patternBehind);
  session.history().undo();
  EXPECT_TRUE(pattern()->colours.empty());
  session.history().undo();
  EXPECT_EQ(pattern()->turn, 0);
  session.history().undo();
  EXPECT_EQ(pattern()->scale, patternCalled("dots")->usual);
  session.history().undo();
  EXPECT_FALSE(pattern());
}

TEST(CardPanel, APictureFileIsAPaperAndABrokenOneIsTold) {
  const QTemporaryDir folder;
  const QString good = folder.filePath("good.png");
  QImage image(60, 30, QImage::Format_RGB32);
  image.fill(Qt::darkGreen);
  ASSERT_TRUE(image.save(good));
  const QString broken = folder.filePath("broken.png");
  ASSERT_TRUE(QFile(good).copy(broken));
  ASSERT_TRUE(QFile(broken).resize(40));
  DesignSession session;
  CardPanel panel(session);
  auto* picker = panel.findChild<PatternPicker*>();
  const auto pattern = [&] { return session.design().card.colours.pattern; };
  picker->takePicture(broken);
  EXPECT_FALSE(pattern()) << "the design stays as it was";
  EXPECT_TRUE(picker->complaint().contains("broken.png"));
  picker->takePicture(good);
  ASSERT_TRUE(pattern() && pattern()->picture);
  EXPECT_TRUE(picker->complaint().isEmpty());
  for (auto* box : picker->findChildren<QCheckBox*>()) box->click();
  EXPECT_FALSE(pattern()->picture->tiled);
  EXPECT_TRUE(pattern()->plate);
  LengthEdit* right = nullptr;
  for (auto* edit : picker->findChildren<LengthEdit*>())
    if (edit->accessibleName() == "To the right by") right = edit;
  ASSERT_NE(right, nullptr);
  right->selectAll();
  QTest::keyClicks(right, "-7 mm");
  QTest::keyClick(right, Qt::Key_Return);
  EXPECT_EQ(pattern()->picture->right, mm(-7));
  while (pattern()) session.history().undo();
  EXPECT_FALSE(session.history().canUndo());
}

TEST(CardPanel, AColourForThePrintedSideTakesThePatternAway) {
  DesignSession session;
  CardPanel panel(session);
  pickPattern(*panel.findChild<PatternPicker*>(), "Stripes");
  const auto buttons = panel.findChildren<ColourButton*>(QString(), Qt::FindDirectChildrenOnly);
  ASSERT_EQ(buttons.size(), 2);
  pick(*buttons[1], "cream");
  EXPECT_TRUE(session.design().card.colours.pattern) << "the other side keeps it";
  pick(*buttons[0], "sage");
  EXPECT_EQ(session.design().card.colours, *parseCardColours("sage/cream"));
}

}  // namespace
}  // namespace creasewright
