#include "keeping/keep_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include "support/heart_box.h"

namespace creasewright {
namespace {

QCheckBox* boxCalled(const KeepDialog& dialog, const QString& words) {
  for (QCheckBox* box : dialog.findChildren<QCheckBox*>())
    if (box->text() == words) return box;
  return nullptr;
}

QLineEdit* fieldCalled(const KeepDialog& dialog, const QString& name) {
  for (QLineEdit* field : dialog.findChildren<QLineEdit*>())
    if (field->accessibleName() == name) return field;
  return nullptr;
}

void pressIn(const KeepDialog& dialog, const QString& words) {
  for (QPushButton* button : dialog.findChildren<QPushButton*>())
    if (button->text() == words) button->click();
}

QString toldBy(const KeepDialog& dialog) {
  for (QLabel* label : dialog.findChildren<QLabel*>())
    if (label->property("problem").toBool() && !label->isHidden()) return label->text();
  return {};
}

TEST(KeepDialog, MakesAStyleOfWhatIsTyped) {
  KeepDialog dialog(testing::heartBox(), {}, {}, Unit::Millimetre);
  dialog.show();
  pressIn(dialog, "Keep");
  EXPECT_FALSE(dialog.style()) << "without a name";
  EXPECT_EQ(toldBy(dialog), "Give the style a name.");
  fieldCalled(dialog, "Name")->setText("Heart box");
  boxCalled(dialog, "Tuck flap")->click();
  boxCalled(dialog, "Glue seam")->click();
  fieldCalled(dialog, "Rule of Tuck flap")->setText("brim / 2");
  pressIn(dialog, "Keep");
  EXPECT_FALSE(dialog.style());
  EXPECT_TRUE(toldBy(dialog).contains("brim")) << toldBy(dialog).toStdString();
  fieldCalled(dialog, "Rule of Tuck flap")->setText("width / 2");
  boxCalled(dialog, "Only for products of these sizes")->click();
  pressIn(dialog, "Keep");
  ASSERT_TRUE(dialog.style());
  const OwnStyle& style = *dialog.style();
  EXPECT_EQ(style.title, "Heart box");
  EXPECT_EQ(style.seen, (std::vector<std::string>{"length", "width", "height", "thumb-notch"}));
  EXPECT_EQ(style.rules.at("tuck"), "width / 2");
  EXPECT_FALSE(style.rules.contains("seam"));
  ASSERT_TRUE(style.suits);
  EXPECT_EQ(style.suits->least[0], Length::mm(30)) << "half the product in hand";
  EXPECT_EQ(style.suits->most[2], Length::mm(240));
}

TEST(KeepDialog, SizesThatAreNoneAreToldAtTheirField) {
  KeepDialog dialog(testing::heartBox(), {}, {}, Unit::Millimetre);
  dialog.show();
  fieldCalled(dialog, "Name")->setText("Heart box");
  boxCalled(dialog, "Only for products of these sizes")->click();
  QLineEdit* least = fieldCalled(dialog, "Length, smallest");
  least->setFocus();
  least->selectAll();
  QTest::keyClicks(least, "500 mm");
  pressIn(dialog, "Keep");
  EXPECT_FALSE(dialog.style());
}

TEST(KeepDialog, AStyleIsKeptAgainUnderItsId) {
  const OwnStyle first = testing::heartStyle();
  const Design made =
      *newDesign(first, std::nullopt, cards().front(), Ease::Easy, ToolGrid::millimetre());
  KeepDialog dialog(made, {first}, first.id, Unit::Millimetre);
  dialog.show();
  EXPECT_EQ(fieldCalled(dialog, "Name")->text(), "Heart box");
  EXPECT_FALSE(boxCalled(dialog, "Tuck flap")->isChecked());
  pressIn(dialog, "Keep");
  ASSERT_TRUE(dialog.style());
  EXPECT_EQ(dialog.style()->id, first.id);
  EXPECT_EQ(dialog.style()->change, 2);
  KeepDialog other(made, {first}, first.id, Unit::Millimetre);
  other.show();
  other.findChild<QComboBox*>()->setCurrentIndex(0);
  pressIn(other, "Keep");
  ASSERT_TRUE(other.style());
  EXPECT_NE(other.style()->id, first.id);
  EXPECT_EQ(other.style()->change, 1);
}

TEST(KeepDialog, AnotherStyleThatIsChosenBringsItsSizesAndMeasures) {
  const OwnStyle first = testing::heartStyle();
  KeepDialog dialog(testing::plainTuckBox(), {first}, {}, Unit::Millimetre);
  dialog.show();
  EXPECT_TRUE(boxCalled(dialog, "Tuck flap")->isChecked());
  auto* again = dialog.findChild<QComboBox*>();
  again->setCurrentIndex(1);
  emit again->activated(1);
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  EXPECT_FALSE(boxCalled(dialog, "Tuck flap")->isChecked());
  EXPECT_EQ(fieldCalled(dialog, "Name")->text(), "Heart box");
  pressIn(dialog, "Keep");
  ASSERT_TRUE(dialog.style());
  EXPECT_EQ(dialog.style()->suits, first.suits);
  EXPECT_EQ(dialog.style()->rules, first.rules);
  EXPECT_EQ(dialog.style()->id, first.id);
}

}  // namespace
}  // namespace creasewright
