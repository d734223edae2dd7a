#include "panels/card_panel.h"

#include <QComboBox>
#include <QTest>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "widgets/length_edit.h"

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

}  // namespace
}  // namespace creasewright
