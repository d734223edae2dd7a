#include "classroom/kit_window.h"

#include <QAction>
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QRegularExpression>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <algorithm>

#include <gtest/gtest.h>

#include "bridge/label_text.h"
#include "classroom/kit_preview.h"
#include "output/pdf_export.h"
#include "papers/kit/kit_csv.h"
#include "papers/kit/kit_pages.h"
#include "papers/kit/kit_words.h"
#include "widgets/page_preview.h"
#include "widgets/undo_keys.h"

namespace creasewright {
namespace {

/// A PDF without what tells the time it was made.
QByteArray timeless(const QByteArray& pdf) {
  QString words = QString::fromLatin1(pdf);
  words.replace(QRegularExpression(QStringLiteral("/(CreationDate|ModDate) ?\\([^)]*\\)")), {});
  words.replace(QRegularExpression(QStringLiteral("<xmp:[A-Za-z]*Date>[^<]*")), {});
  words.replace(QRegularExpression(QStringLiteral("/ID ?\\[[^]]*\\]")), {});
  return words.toLatin1();
}

QByteArray contentOf(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

class KitWindowTest : public ::testing::Test {
 protected:
  KitWindowTest() : keys_(&window_) {
    window_.show();
    (void)QTest::qWaitForWindowExposed(&window_);
  }

  /// A plan with all that is found out about it.
  bool isPlanned() {
    return QTest::qWaitFor([this] { return plan() != nullptr && plan()->findings.has_value(); },
                           30'000);
  }
  const KitPlan* plan() { return window_.preview().plan(); }
  KitSession& kit() { return window_.kit(); }
  QSpinBox* spin(const char* name) {
    for (auto* box : window_.findChildren<QSpinBox*>()) {
      if (box->accessibleName() == QLatin1String(name)) {
        return box;
      }
    }
    return nullptr;
  }
  QAction* saveAs(const char* words) {
    for (auto* action : window_.findChildren<QAction*>()) {
      if (action->text() == QString::fromUtf8(words)) {
        return action;
      }
    }
    return nullptr;
  }
  void press(Qt::KeyboardModifiers modifiers) {
    QWidget* at = window_.focusWidget() != nullptr ? window_.focusWidget() : &window_;
    QTest::keyClick(at, Qt::Key_Z, modifiers);
  }

  DesignSession session_;
  KitWindow window_{session_};
  UndoKeys keys_;
};

TEST_F(KitWindowTest, SaveIsSeenOnALowScreen) {
  window_.resize(980, 560);
  ASSERT_TRUE(QTest::qWaitFor([this] { return window_.height() == 560; }))
      << "no lower than " << window_.height();
  for (const QPushButton* button : window_.findChildren<QPushButton*>())
    if (button->property("primary").toBool()) {
      const QRect place(button->mapTo(&window_, QPoint()), button->size());
      EXPECT_TRUE(window_.rect().contains(place)) << button->text().toStdString();
      return;
    }
  FAIL() << "no button to save with";
}

TEST_F(KitWindowTest, TheChoiceOfPlanTellsWhatAnEasyOneCosts) {
  ASSERT_TRUE(isPlanned());
  EXPECT_EQ(kit().kit().goal, PlanGoal::Easy);
  ASSERT_TRUE(plan()->isEasy());
  const auto isTold = [this](const QString& words) {
    const QList<QLabel*> labels = window_.findChildren<QLabel*>();
    return std::ranges::any_of(labels, [&](const QLabel* label) { return label->text() == words; });
  };
  EXPECT_TRUE(isTold(easyCostSentence(*plan())));
  const QList<QComboBox*> boxes = window_.findChildren<QComboBox*>();
  const auto choice = std::ranges::find_if(
      boxes, [](const QComboBox* box) { return box->accessibleName() == QStringLiteral("Plan"); });
  ASSERT_NE(choice, boxes.end());
  const QString cost = easyCostSentence(*plan());
  (*choice)->setCurrentIndex((*choice)->findText(QStringLiteral("Fewest sheets")));
  EXPECT_EQ(kit().kit().goal, PlanGoal::Fewest);
  ASSERT_TRUE(isPlanned());
  EXPECT_FALSE(plan()->isEasy());
  EXPECT_FALSE(isTold(cost));
  kit().history().undo();
  EXPECT_EQ((*choice)->currentText(), QStringLiteral("Easy to cut"));
}

TEST_F(KitWindowTest, FieldsFollowTheHistoryWithItsKeys) {
  auto* takers = spin("People");
  ASSERT_NE(takers, nullptr);
  takers->setValue(20);
  EXPECT_EQ(kit().kit().takers, 20);
  auto* title = window_.findChild<QLineEdit*>();
  for (auto* line : window_.findChildren<QLineEdit*>()) {
    if (line->accessibleName() == QLatin1String("Title")) {
      title = line;
    }
  }
  title->setFocus();
  QTest::keyClicks(title, QStringLiteral("Soap"));
  QTest::keyClick(title, Qt::Key_Tab);
  EXPECT_EQ(kit().kit().title, "Soap");
  EXPECT_EQ(kit().history().count(), 2);
  press(Qt::ControlModifier);
  EXPECT_EQ(kit().kit().title, "");
  EXPECT_EQ(title->text(), QString());
  press(Qt::ControlModifier);
  EXPECT_EQ(takers->value(), 12);
  press(Qt::ControlModifier | Qt::ShiftModifier);
  press(Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(takers->value(), 20);
  EXPECT_EQ(title->text(), QStringLiteral("Soap"));
}

/// Other sheets and added rows come back too.
TEST_F(KitWindowTest, SheetsAndContentsFollowTheHistory) {
  const std::vector<StockSheet> before = kit().kit().stock;
  ASSERT_EQ(before.size(), 1U);
  QComboBox* second = nullptr;
  for (auto* box : window_.findChildren<QComboBox*>()) {
    if (box->accessibleName() == QLatin1String("Other sheets")) {
      second = box;
    }
  }
  ASSERT_NE(second, nullptr);
  second->setCurrentIndex(second->count() - 1);
  ASSERT_EQ(kit().kit().stock.size(), 2U);
  EXPECT_EQ(kit().history().undoText(), QStringLiteral("sheets"));
  const int chosen = second->currentIndex();
  kit().history().undo();
  EXPECT_TRUE(kit().kit().stock == before);
  EXPECT_EQ(second->currentIndex(), 0);
  kit().history().redo();
  EXPECT_EQ(second->currentIndex(), chosen);
  auto* list = window_.findChild<QListWidget*>();
  ClassKit more = kit().kit();
  more.blanks = {{"Panel", Length::mm(80), Length::mm(60), cards()[0], 1}};
  kit().apply(more);
  EXPECT_EQ(list->count(), 2);
}

/// While the kit has changed and no plan is shown yet, there is nothing to save.
TEST_F(KitWindowTest, OnlyWhatIsShownCanBeSaved) {
  ASSERT_TRUE(isPlanned());
  QAction* pdf = saveAs("Plan as PDF…");
  ASSERT_NE(pdf, nullptr);
  EXPECT_TRUE(pdf->isEnabled());
  spin("People")->setValue(40);
  EXPECT_EQ(plan(), nullptr);
  EXPECT_FALSE(pdf->isEnabled());
  ASSERT_TRUE(isPlanned());
  EXPECT_TRUE(pdf->isEnabled());
  EXPECT_EQ(plan()->kit().takers, 40);
}

/// What is saved is what is shown: the file is the window's own pages, and the plan is the very one
/// the window has, not another of the same kit.
TEST_F(KitWindowTest, WhatIsSavedIsWhatIsShown) {
  ASSERT_TRUE(isPlanned());
  const QTemporaryDir folder;
  const BuiltKit* shown = plan()->built.get();
  const QString path = folder.filePath(QStringLiteral("class.pdf"));
  QTimer::singleShot(0, &window_, [&] {
    auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
    ASSERT_NE(dialog, nullptr);
    dialog->selectFile(path);
    static_cast<QDialog*>(dialog)->accept();
  });
  saveAs("Plan as PDF…")->trigger();
  EXPECT_EQ(plan()->built.get(), shown);
  const auto* pages = window_.findChild<PagePreview*>();
  const Unit unit = session_.unit();
  const auto drawn = renderPdf(pages->pages(), wordingIn(unit),
                               {kitTitle(kit().kit()), QDateTime::currentDateTime()});
  ASSERT_TRUE(drawn);
  const QByteArray saved = contentOf(path);
  ASSERT_FALSE(saved.isEmpty());
  EXPECT_EQ(timeless(saved), timeless(*drawn));
}

}  // namespace
}  // namespace creasewright
