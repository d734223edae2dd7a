#include "preview/fold_panel.h"

#include <QLabel>
#include <QSlider>
#include <QTest>
#include <QToolButton>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "extras/extra_kind.h"
#include "pages/gift_strip.h"
#include "preview/fold_view.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr int kStage = 100;  // slider steps of one stage

struct ShownFold {
  DesignSession session;
  FoldPanel panel{session};

  [[nodiscard]] QString words() const { return panel.findChild<QLabel*>()->text(); }
  void press(int button) {
    QTest::mouseClick(panel.findChildren<QToolButton*>().at(button), Qt::LeftButton);
  }
  [[nodiscard]] int stages() const { return session.built().pieces.front().net.stageCount(); }
};

TEST(FoldPanel, TheSliderGoesFromFlatThroughEveryNamedStopOfEveryStyle) {
  ShownFold shown;
  for (const Style& style : styles()) {
    changeStyle(shown.session, style.id);
    QSlider& slider = shown.panel.slider();
    const std::vector<StripStop> stops = giftStops(shown.session.built());
    ASSERT_EQ(slider.maximum(), std::ssize(stops) * kStage) << style.id;
    slider.setValue(0);
    EXPECT_EQ(shown.words(), "Flat");
    EXPECT_EQ(shown.panel.view().done(), 0);
    for (int i = 0; i < std::ssize(stops); ++i) {
      const StripStop& stop = stops[static_cast<std::size_t>(i)];
      for (const int at : {i * kStage + 1, (i + 1) * kStage}) {
        slider.setValue(at);
        EXPECT_FALSE(shown.words().isEmpty()) << style.id;
        EXPECT_EQ(shown.words().contains(QStringLiteral("tage %1 of ").arg(stop.stage)),
                  stop.code == StopCode::Fold)
            << style.id << ' ' << shown.words().toStdString();
        EXPECT_DOUBLE_EQ(shown.panel.view().done(),
                         at == slider.maximum() ? kFinished : static_cast<double>(at) / kStage);
      }
    }
  }
}

TEST(FoldPanel, ButtonsGoToTheEndOfTheStageBeforeOrAfter) {
  ShownFold shown;
  ASSERT_GE(shown.stages(), 3);
  QSlider& slider = shown.panel.slider();
  slider.setValue(130);
  shown.press(1);
  EXPECT_EQ(slider.value(), 200);
  shown.press(1);
  EXPECT_EQ(slider.value(), 300);
  slider.setValue(130);
  shown.press(0);
  EXPECT_EQ(slider.value(), 100);
  shown.press(0);
  shown.press(0);
  EXPECT_EQ(slider.value(), 0);
  slider.setValue(slider.maximum());
  shown.press(1);
  EXPECT_EQ(slider.value(), slider.maximum());
}

TEST(FoldPanel, AChangedMeasureLeavesTheStageAlone) {
  ShownFold shown;
  shown.panel.slider().setValue(150);
  changeProduct(shown.session, *parseProduct("box:90x40x22mm"));
  EXPECT_EQ(shown.panel.slider().value(), 150);
  changeStyle(shown.session, "straight-tuck-box");
  EXPECT_EQ(shown.panel.slider().value(), shown.panel.slider().maximum())
      << "another style is shown folded";
}

TEST(FoldPanel, ThePiecesOfABoxHaveOneStrip) {
  ShownFold shown;
  changeStyle(shown.session, "drawer-box");
  const auto& pieces = shown.session.built().pieces;
  ASSERT_GT(pieces.size(), 1U);
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    shown.panel.showPiece(static_cast<int>(i));
    EXPECT_EQ(shown.panel.slider().maximum(),
              (pieces[0].net.stageCount() + pieces[1].net.stageCount() + 2) * kStage)
        << "both pieces, the product goes in, and the drawer into its sleeve";
  }
  changeStyle(shown.session, "straight-tuck-box");
  EXPECT_EQ(shown.words(), "Flat") << "a piece that is no longer there";
}

TEST(FoldPanel, ItPlaysFromFlatToFoldedAndStopsThere) {
  ShownFold shown;
  shown.panel.show();
  QSlider& slider = shown.panel.slider();
  ASSERT_EQ(slider.value(), slider.maximum());
  std::vector<int> seen;
  QObject::connect(&slider, &QSlider::valueChanged, [&](int value) { seen.push_back(value); });
  auto* play = shown.panel.findChildren<QToolButton*>().at(2);
  QTest::mouseClick(play, Qt::LeftButton);
  EXPECT_EQ(slider.value(), 0) << "all is folded: from the start";
  ASSERT_TRUE(QTest::qWaitFor([&] { return slider.value() > 30; }, 10'000));
  QTest::mouseClick(play, Qt::LeftButton);
  const int stopped = slider.value();
  QTest::qWait(120);
  EXPECT_EQ(slider.value(), stopped);
  QTest::mouseClick(play, Qt::LeftButton);
  EXPECT_GE(slider.value(), stopped) << "it goes on";
  ASSERT_TRUE(QTest::qWaitFor([&] { return slider.value() == slider.maximum(); }, 60'000));
  EXPECT_FALSE(play->isChecked());
  EXPECT_TRUE(std::ranges::is_sorted(seen));
}

Extra extraOf(std::string_view kind, const Design& design) {
  return standardExtra(**findExtraKind(kind), design.card);
}

TEST(FoldPanel, TheStripGoesOnUntilTheGiftIsFinished) {
  ShownFold shown;
  changeProduct(shown.session, *parseProduct("box:90x60x30mm"));
  changeStyle(shown.session, "two-piece-box");
  std::vector<Extra> extras;
  for (const char* kind : {"ribbon", "belly-band"})
    extras.push_back(extraOf(kind, shown.session.design()));
  changeExtras(shown.session, std::move(extras), {});
  const QStringList told{QStringLiteral("Put the product in"),
                         QStringLiteral("Put the pieces together"),
                         QStringLiteral("Slide the band on"), QStringLiteral("Tie the ribbon")};
  QSlider& slider = shown.panel.slider();
  shown.panel.resize(500, 450);
  shown.panel.show();
  QStringList seen;
  QImage before;
  for (int at = kStage / 2; at <= slider.maximum(); at += kStage / 2) {
    slider.setValue(at);
    if (!shown.words().contains(QStringLiteral("tage ")) && !seen.contains(shown.words()))
      seen.append(shown.words());
    const QImage now = shown.panel.view().grab().toImage();
    EXPECT_NE(now, before) << shown.words().toStdString();
    before = now;
  }
  EXPECT_EQ(seen, told);
}

TEST(FoldPanel, TheFinishedBoxIsOpenedAndClosed) {
  ShownFold shown;
  changeStyle(shown.session, "two-piece-box");
  shown.panel.resize(500, 450);
  shown.panel.show();
  FoldView& view = shown.panel.view();
  const QImage closed = view.grab().toImage();
  const QList<QAction*> openings = view.openings();
  ASSERT_EQ(openings.size(), 3);
  EXPECT_TRUE(openings.at(0)->isChecked());
  shown.panel.slider().setValue(0);
  openings.at(1)->trigger();
  EXPECT_EQ(view.opening(), kAjar);
  EXPECT_EQ(shown.panel.slider().value(), shown.panel.slider().maximum()) << "there it is seen";
  const QImage ajar = view.grab().toImage();
  EXPECT_NE(ajar, closed);
  ASSERT_TRUE(QTest::qWaitForWindowActive(&shown.panel));
  view.setFocus();
  QTest::keyClick(&view, Qt::Key_6);
  EXPECT_TRUE(openings.at(2)->isChecked());
  EXPECT_FALSE(openings.at(1)->isChecked());
  EXPECT_NE(view.grab().toImage(), ajar);
  QTest::keyClick(&view, Qt::Key_4);
  EXPECT_EQ(view.grab().toImage(), closed);
}

}  // namespace
}  // namespace creasewright
