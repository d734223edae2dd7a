#include <QCheckBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>

#include <gtest/gtest.h>

#include "classroom/blank_dialog.h"
#include "classroom/names_dialog.h"
#include "classroom/offcut_dialog.h"
#include "classroom/price_dialog.h"
#include "core/kits/plan_of.h"

namespace creasewright {
namespace {

void press(const QDialog& dialog, const char* words) {
  for (auto* button : dialog.findChildren<QPushButton*>()) {
    if (button->text() == QLatin1String(words)) {
      button->click();
    }
  }
}

TEST(BlankDialog, TakesASizeAndRefusesOneThatCannotBeCut) {
  BlankDialog dialog(cards()[2], Unit::Inch);
  auto fields = dialog.findChildren<LengthEdit*>();
  ASSERT_EQ(fields.size(), 2);
  fields[0]->setLength(Length::mm(1));
  press(dialog, "Add");
  EXPECT_NE(dialog.result(), QDialog::Accepted);
  EXPECT_TRUE(fields[0]->isWrong());
  fields[0]->setLength(Length::inches(3));
  press(dialog, "Add");
  EXPECT_EQ(dialog.result(), QDialog::Accepted);
  EXPECT_EQ(dialog.blank().width, Length::inches(3));
  EXPECT_EQ(dialog.blank().height, Length::inches(6));
  EXPECT_EQ(dialog.blank().card, cards()[2]);
  EXPECT_EQ(dialog.blank().name, "Panel");
}

TEST(PriceDialog, TakesAmountsAndRefusesWhatIsNone) {
  PriceDialog dialog(std::nullopt);
  dialog.rate().setText(QStringLiteral("twelve"));
  press(dialog, "Keep");
  EXPECT_NE(dialog.result(), QDialog::Accepted);
  EXPECT_TRUE(dialog.complaint().contains(QStringLiteral("twelve")));
  dialog.rate().setText(QStringLiteral("12,50"));
  dialog.classCosts().setText(QStringLiteral("80"));
  dialog.margin().setValue(25);
  press(dialog, "Keep");
  EXPECT_EQ(dialog.result(), QDialog::Accepted);
  ASSERT_TRUE(dialog.pricing());
  EXPECT_EQ(dialog.pricing()->hourlyRate, 1250);
  EXPECT_EQ(dialog.pricing()->classCosts, 8000);
  EXPECT_EQ(dialog.pricing()->margin, 25);
  PriceDialog none(dialog.pricing());
  none.asked().setChecked(false);
  press(none, "Keep");
  EXPECT_EQ(none.result(), QDialog::Accepted);
  EXPECT_FALSE(none.pricing());
}

TEST(NamesDialog, OneNameALine) {
  ClassKit kit;
  kit.names = {"Ada", "Ben"};
  NamesDialog dialog(kit, Unit::Millimetre);
  dialog.findChild<QPlainTextEdit*>()->appendPlainText(QStringLiteral("\n  Cleo "));
  dialog.findChildren<LengthEdit*>()[0]->setLength(Length::mm(5));
  press(dialog, "Keep");
  EXPECT_NE(dialog.result(), QDialog::Accepted);
  dialog.findChildren<LengthEdit*>()[0]->setLength(Length::mm(70));
  press(dialog, "Keep");
  EXPECT_EQ(dialog.result(), QDialog::Accepted);
  EXPECT_EQ(dialog.names(), (std::vector<std::string>{"Ada", "Ben", "Cleo"}));
  EXPECT_EQ(dialog.labelWidth(), Length::mm(70));
  EXPECT_EQ(dialog.labelHeight(), kit.labelHeight);
}

TEST(OffcutDialog, GivesWhatWasTicked) {
  ClassKit kit;
  kit.takers = 4;
  kit.items.push_back({*newDesign("two-piece-box", *parseProduct("box:60x40x25mm"), cards()[0],
                                  Ease::Easy, ToolGrid::millimetre()),
                       1});
  kit.stock = {{"sheet", Length::mm(320), Length::mm(450)}};
  const KitPlan plan = withFindings(testing::planOf(kit).value());
  const std::vector<OffcutUse>& uses = plan.findings->offcuts;
  ASSERT_GE(uses.size(), 2U);
  OffcutDialog dialog(plan, Unit::Millimetre);
  EXPECT_TRUE(dialog.chosen().empty());
  dialog.tick(1);
  ASSERT_EQ(dialog.chosen().size(), 1U);
  EXPECT_EQ(dialog.chosen()[0].extra, uses[1].extra);
}

}  // namespace
}  // namespace creasewright
