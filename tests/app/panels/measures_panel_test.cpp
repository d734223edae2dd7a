#include "panels/measures_panel.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QSpinBox>
#include <QTest>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "panels/checks_panel.h"
#include "styles/registry.h"
#include "widgets/length_edit.h"

namespace creasewright {
namespace {

TEST(ParameterRows, EveryParameterOfEveryStyleHasOneRowThatShowsAndTellsItsValue) {
  for (const Style& style : styles()) {
    ParameterRows rows(style.parameters);
    const Parameters values = standardParameters(style);
    rows.setValues(values, Length::mm(1));
    std::vector<std::pair<QString, qint64>> told;
    QObject::connect(&rows, &ParameterRows::edited,
                     [&](const QString& key, qint64 raw) { told.emplace_back(key, raw); });
    std::size_t shown = rows.lengthKeys().size();
    for (const std::string& key : rows.lengthKeys()) {
      LengthEdit* field = rows.lengthField(key);
      ASSERT_NE(field, nullptr);
      field->selectAll();
      QTest::keyClicks(field, QStringLiteral("77 mm"));
      QTest::keyClick(field, Qt::Key_Return);
      ASSERT_FALSE(told.empty()) << style.id << ' ' << key;
      EXPECT_EQ(told.back(), std::pair(QString::fromStdString(key), qint64{Length::mm(77).nm()}));
    }
    const auto spins = rows.findChildren<QSpinBox*>();
    const auto lists = rows.findChildren<QComboBox*>();
    const auto boxes = rows.findChildren<QAbstractButton*>();
    for (QSpinBox* spin : spins) {
      spin->setValue(spin->value() + 1);
      EXPECT_EQ(told.back().second, spin->value());
      EXPECT_EQ(told.back().second, values.raw(told.back().first.toStdString()) + 1);
    }
    shown += static_cast<std::size_t>(spins.size() + lists.size());
    for (QAbstractButton* box : boxes) {
      const bool on = box->isChecked();
      box->click();
      EXPECT_EQ(told.back().second, on ? 0 : 1);
      EXPECT_EQ(values.flag(told.back().first.toStdString()), on);
      ++shown;
    }
    EXPECT_EQ(shown, style.parameters.size()) << style.id;
  }
}

TEST(ParameterRows, OneStepIsTheGridOrElseAMillimetreOrASixteenth) {
  EXPECT_EQ(stepOf(ToolGrid::eighthInch(), Unit::Millimetre), Length::inches(1, 8));
  EXPECT_EQ(stepOf(ToolGrid::none(), Unit::Millimetre), Length::mm(1));
  EXPECT_EQ(stepOf(ToolGrid::none(), Unit::Inch), Length::inches(1, 16));
}

TEST(MeasuresPanel, TypingChangesTheDesignAndAStyleBringsItsOwnRows) {
  DesignSession session;
  MeasuresPanel panel(session);
  panel.show();
  LengthEdit* depth = panel.lengthField("depth");
  ASSERT_NE(depth, nullptr);
  EXPECT_EQ(depth->length(), session.design().parameters.length("depth"));
  depth->selectAll();
  QTest::keyClicks(depth, QStringLiteral("31 mm"));
  QTest::keyClick(depth, Qt::Key_Return);
  EXPECT_EQ(session.design().parameters.length("depth"), Length::mm(31));
  EXPECT_EQ(session.history().count(), 1);
  session.history().undo();
  EXPECT_EQ(depth->length(), session.design().parameters.length("depth"));
  changeStyle(session, "straight-tuck-box");
  EXPECT_EQ(panel.lengthField("frame"), nullptr);
  for (const ParameterSpec& spec : session.built().style->parameters) {
    if (spec.kind == ParameterKind::Length) {
      EXPECT_NE(panel.lengthField(std::string(spec.key)), nullptr) << spec.key;
    }
  }
  EXPECT_FALSE(panel.focusParameter("no-such-measure"));
}

TEST(MeasuresPanel, AMeasureLightsItsPanelsWhileItHasTheFocus) {
  DesignSession session;
  MeasuresPanel panel(session);
  panel.show();
  panel.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&panel));
  ASSERT_TRUE(panel.focusParameter("depth"));
  EXPECT_FALSE(session.selection().kept().isEmpty());
  panel.lengthField("depth")->clearFocus();
  EXPECT_TRUE(session.selection().kept().isEmpty());
}

TEST(MeasuresPanel, AMeasureSaysWhereItComesFromOrThatItIsSetByHand) {
  DesignSession session;
  MeasuresPanel panel(session);
  panel.show();
  const auto says = [&](const QString& words) {
    int found = 0;
    for (auto* label : panel.findChildren<QLabel*>())
      if (label->isVisibleTo(&panel) && label->text().contains(words)) ++found;
    return found;
  };
  EXPECT_EQ(says(QStringLiteral("Set by hand")), 0);
  const FitReason reason = session.built().reasons.front();
  changeParameter(session, reason.key, (reason.chosen + Length::mm(5)).nm());
  EXPECT_EQ(says(QStringLiteral("Set by hand")), 1);
}

TEST(ChecksPanel, EveryProblemIsASentenceThatLeadsToItsPlace) {
  DesignSession session;
  ChecksPanel panel(session);
  QString asked;
  int count = -1;
  QObject::connect(&panel, &ChecksPanel::parameterAsked, [&](const QString& key) { asked = key; });
  QObject::connect(&panel, &ChecksPanel::countChanged, [&](int now) { count = now; });
  EXPECT_EQ(panel.list().count(), 0);
  changeParameter(session, "depth", Length::mm(0.5).nm());
  ASSERT_GT(panel.list().count(), 0);
  EXPECT_EQ(count, panel.list().count());
  EXPECT_EQ(panel.list().count(), static_cast<int>(session.problems().size()));
  for (int row = 0; row < panel.list().count(); ++row) {
    EXPECT_TRUE(panel.list().item(row)->text().endsWith('.'));
    const Problem& problem = session.problems()[static_cast<std::size_t>(row)];
    if (!session.design().parameters.has(problem.where)) continue;
    asked.clear();
    panel.list().setCurrentRow(-1);
    panel.list().setCurrentRow(row);
    EXPECT_EQ(asked.toStdString(), problem.where);
  }
  session.history().undo();
  EXPECT_EQ(panel.list().count(), 0);
  EXPECT_EQ(count, 0);
}

}  // namespace
}  // namespace creasewright
