#include <QAbstractButton>
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QMessageBox>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "document/design_file.h"
#include "shell/file_actions.h"
#include "shell/main_window.h"

namespace creasewright {
namespace {

/// Presses a button of the next question, or Esc when `words` are empty.
class Answer : public QObject {
 public:
  explicit Answer(const QString& words) : words_(words) {
    connect(&timer_, &QTimer::timeout, this, &Answer::press);
    timer_.start(20);
  }
  [[nodiscard]] bool given() const { return given_; }

 private:
  void press() {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    if (box == nullptr || given_) {
      return;
    }
    if (words_.isEmpty()) {
      given_ = true;
      return box->reject();
    }
    for (QAbstractButton* button : box->buttons()) {
      if (button->text() == words_) {
        given_ = true;
        return button->click();
      }
    }
  }

  QString words_;
  QTimer timer_;
  bool given_ = false;
};

Design tray(const char* title) {
  Design design = freshDesign();
  design.title = title;
  return design;
}

/// One copy that a killed program has left in a folder of its own.
struct Left {
  QTemporaryDir folder;
  QString copy = folder.filePath("recovery-1.cwdesign");

  Left() { EXPECT_FALSE(writeDesignFile(tray("Lost tray"), copy.toStdString())); }
  void offer(MainWindow& window, const QString& answer) const {
    const Answer click(answer);
    window.offer(findRecovery(folder.path()));
    EXPECT_TRUE(click.given());
  }
};

QStringList ownCopies() {
  return QDir(recoveryFolder()).entryList({"recovery-*.cwdesign"}, QDir::Files);
}

TEST(Questions, RestoredWorkIsKeptUntilItIsSaved) {
  const Left left;
  MainWindow window;
  window.show();
  const auto before = ownCopies().size();
  left.offer(window, "Restore");
  EXPECT_EQ(window.session().design().title, "Lost tray");
  EXPECT_TRUE(window.session().isDirty());
  EXPECT_FALSE(QFile::exists(left.copy));
  EXPECT_EQ(ownCopies().size(), before + 1) << "from the first moment on";
  ASSERT_FALSE(window.session().saveAs(left.folder.filePath("saved.cwdesign")));
  EXPECT_EQ(ownCopies().size(), before);
}

TEST(Questions, WorkIsThrownAwayOnlyWhenSaidSo) {
  const Left left;
  MainWindow window;
  window.show();
  left.offer(window, {});
  EXPECT_TRUE(QFile::exists(left.copy)) << "Esc is no answer";
  EXPECT_NE(window.session().design().title, "Lost tray");
  left.offer(window, "Discard");
  EXPECT_FALSE(QFile::exists(left.copy));
}

/// A window with a saved design whose file somebody else then changes.
struct ChangedOutside {
  QTemporaryDir folder;
  QString path = folder.filePath("tray.cwdesign");
  MainWindow window;

  ChangedOutside() {
    window.show();
    window.session().start(tray("Mine"), {});
    EXPECT_FALSE(window.session().saveAs(path));
  }
  void change() const { EXPECT_FALSE(writeDesignFile(tray("Theirs"), path.toStdString())); }
};

TEST(Questions, AChangedFileIsLoadedWhenWanted) {
  ChangedOutside file;
  const Answer click("Load the file");
  file.change();
  ASSERT_TRUE(QTest::qWaitFor([&] { return click.given(); }));
  EXPECT_EQ(file.window.session().design().title, "Theirs");
  EXPECT_FALSE(file.window.session().isDirty());
}

TEST(Questions, ADesignKeptAgainstAChangedFileIsUnsaved) {
  ChangedOutside file;
  const Answer click("Keep this design");
  file.change();
  ASSERT_TRUE(QTest::qWaitFor([&] { return click.given(); }));
  EXPECT_EQ(file.window.session().design().title, "Mine");
  EXPECT_TRUE(file.window.session().isDirty());
  file.window.session().start(freshDesign(), {});
}

/// Before the change was noticed by itself.
TEST(Questions, SavingAsksBeforeItReplacesWhatSomebodyElseWrote) {
  ChangedOutside file;
  changeParameter(file.window.session(), "depth", Length::mm(33).nm());
  file.change();
  {
    const Answer click("Do not save");
    EXPECT_FALSE(file.window.files().save());
    EXPECT_TRUE(click.given());
  }
  EXPECT_EQ(readDesignFile(file.path.toStdString()).value().title, "Theirs");
  {
    const Answer click("Replace it");
    EXPECT_TRUE(file.window.files().save());
  }
  EXPECT_EQ(readDesignFile(file.path.toStdString()).value().title, "Mine");
}

TEST(Questions, ARemovedFileCanBeSavedAgain) {
  ChangedOutside file;
  const Answer click("Save again");
  ASSERT_TRUE(QFile::remove(file.path));
  ASSERT_TRUE(QTest::qWaitFor([&] { return click.given(); }));
  EXPECT_TRUE(QTest::qWaitFor([&] { return QFile::exists(file.path); }));
  EXPECT_FALSE(file.window.session().isDirty());
}

TEST(Questions, EachFileOpensAWindowOfItsOwn) {
  const QTemporaryDir folder;
  for (const char* title : {"One", "Two"}) {
    const QString path = folder.filePath(QString(title) + ".cwdesign");
    ASSERT_FALSE(writeDesignFile(tray(title), path.toStdString()));
    const MainWindow* window = openWindow(path);
    EXPECT_TRUE(window->windowTitle().startsWith(title));
  }
  int open = 0;
  for (QWidget* widget : QApplication::topLevelWidgets()) {
    if (qobject_cast<MainWindow*>(widget) != nullptr && widget->isVisible()) {
      ++open;
      widget->close();
    }
  }
  EXPECT_EQ(open, 2);
}

}  // namespace
}  // namespace creasewright
