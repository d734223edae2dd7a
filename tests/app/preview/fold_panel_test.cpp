#include "preview/fold_panel.h"

#include <QLabel>
#include <QSlider>
#include <QTest>
#include <QToolButton>

#include <gtest/gtest.h>

#include "commands/edits.h"
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

TEST(FoldPanel, TheSliderGoesFromFlatThroughEveryNamedStageOfEveryStyle) {
  ShownFold shown;
  for (const Style& style : styles()) {
    changeStyle(shown.session, style.id);
    QSlider& slider = shown.panel.slider();
    ASSERT_EQ(slider.maximum(), std::max(1, shown.stages()) * kStage) << style.id;
    slider.setValue(0);
    EXPECT_EQ(shown.words(), "Flat");
    EXPECT_EQ(shown.panel.view().progress(), 0);
    for (int stage = 1; stage <= shown.stages(); ++stage) {
      const QString head = QStringLiteral("Stage %1 of %2: ").arg(stage).arg(shown.stages());
      for (const int at : {(stage - 1) * kStage + 1, stage * kStage}) {
        slider.setValue(at);
        EXPECT_TRUE(shown.words().startsWith(head)) << style.id << shown.words().toStdString();
        EXPECT_GT(shown.words().size(), head.size()) << style.id;
        EXPECT_DOUBLE_EQ(shown.panel.view().progress(),
                         static_cast<double>(at) / (shown.stages() * kStage));
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

TEST(FoldPanel, EachPieceHasItsOwnStages) {
  ShownFold shown;
  changeStyle(shown.session, "drawer-box");
  const auto& pieces = shown.session.built().pieces;
  ASSERT_GT(pieces.size(), 1U);
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    shown.panel.showPiece(static_cast<int>(i));
    EXPECT_EQ(shown.panel.slider().maximum(), pieces[i].net.stageCount() * kStage);
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

}  // namespace
}  // namespace creasewright
