#include "printing/guide_window.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QTest>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "fit/card_colours.h"
#include "printing/machine_fields.h"
#include "session/preferences.h"
#include "widgets/page_preview.h"

namespace creasewright {
namespace {

void pickData(QComboBox& box, int data) { box.setCurrentIndex(box.findData(data)); }

/// Where the thick fence of the first score map stands, mm from the left.
double fenceOf(const Drawing& page) {
  for (const PathItem& item : page.paths) {
    if (item.role != Role::Legend || !item.filled || item.rings.size() != 1) continue;
    const Bounds box = bounds(item.rings[0]);
    if (box.height() > 20 && box.width() < 2) return box.low.x;
  }
  return -1;
}

TEST(GuideWindow, TheLeftHandIsShownAndRemembered) {
  DesignSession session;
  setPreferredGuideForm({});
  {
    GuideWindow window(session);
    const double before = fenceOf(window.preview().pages().at(0));
    pickData(window.hand(), static_cast<int>(Hand::Left));
    const double after = fenceOf(window.preview().pages().at(0));
    EXPECT_GT(before, 0);
    EXPECT_GT(after, before + 30);
    pickData(window.type(), static_cast<int>(GuideSize::Clear));
  }
  const GuideWindow again(session);
  EXPECT_EQ(preferredGuideForm().hand, Hand::Left);
  EXPECT_EQ(preferredGuideForm().size, GuideSize::Clear);
  setPreferredGuideForm({});
}

TEST(GuideWindow, ReadersOfTheOtherCountryGetTheirPaper) {
  DesignSession session;
  setPreferredGuideForm({});
  GuideWindow window(session);
  pickData(window.readers(), 0);
  EXPECT_NEAR(window.preview().pages().at(0).width, 215.9, 0.01);
  pickData(window.readers(), 1);
  EXPECT_NEAR(window.preview().pages().at(0).width, 210, 0.01);
  pickData(window.readers(), 2);
  EXPECT_NEAR(window.preview().pages().at(0).width, 215.9, 0.01);
}

/// Pixels of the pages as they are shown that are no grey.
int colouredPixels(GuideWindow& window) {
  const QImage shown = window.preview().grab().toImage();
  int count = 0;
  for (int y = 0; y < shown.height(); ++y)
    for (int x = 0; x < shown.width(); ++x) {
      const QColor seen = shown.pixelColor(x, y);
      const auto [least, most] = std::minmax({seen.red(), seen.green(), seen.blue()});
      count += most - least > 24;
    }
  return count;
}

TEST(GuideWindow, BlackAndWhiteIsShownAsItWillBePrinted) {
  DesignSession session;
  Card card = session.design().card;
  card.colours = parseCardColours("plum/mint").value();
  changeCard(session, card);
  setPreferredGuideForm({});
  GuideWindow window(session);
  window.resize(900, 700);
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
  EXPECT_GT(colouredPixels(window), 2000);
  window.black().click();
  EXPECT_EQ(colouredPixels(window), 0);
  window.black().click();
  EXPECT_GT(colouredPixels(window), 2000);
  setPreferredGuideForm({});
}

TEST(MachineFields, SayWhatWasChosen) {
  MachineFields fields;
  EXPECT_FALSE(fields.chosen().sheet);
  pickData(fields.scores(), static_cast<int>(ScoreForm::Perforation));
  fields.outerKerf().setValue(0.2);
  fields.innerKerf().setValue(0.1);
  fields.sheet().setCurrentIndex(fields.sheet().findData(QStringLiteral("12x12")));
  const MachineExport chosen = fields.chosen();
  EXPECT_EQ(chosen.lines.scores, ScoreForm::Perforation);
  EXPECT_DOUBLE_EQ(chosen.lines.kerf.outer, 0.2);
  EXPECT_DOUBLE_EQ(chosen.lines.kerf.inner, 0.1);
  ASSERT_TRUE(chosen.sheet);
  EXPECT_NEAR(chosen.sheet->width, 304.8, 1e-9);
}

}  // namespace
}  // namespace creasewright
