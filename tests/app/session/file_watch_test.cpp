#include "session/file_watch.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "document/design_file.h"

namespace creasewright {
namespace {

constexpr int kPatience = 5000;  // ms; what is waited for comes within a second

/// A design saved in a file of its own, watched.
struct Watched {
  QTemporaryDir folder;
  QString path = folder.filePath("tray.cwdesign");
  DesignSession session;
  FileWatch watch{session};
  QSignalSpy told{&watch, &FileWatch::changedOutside};

  Watched() { EXPECT_FALSE(session.saveAs(path)); }

  /// As another program that saves atomically.
  void writeOutside(const std::string& title) {
    Design other = session.design();
    other.title = title;
    EXPECT_FALSE(writeDesignFile(other, path.toStdString()));
  }
};

TEST(FileWatch, OwnSavingIsNoNews) {
  Watched file;
  changeParameter(file.session, "depth", Length::mm(33).nm());
  ASSERT_FALSE(file.session.saveAs(file.path));
  QTest::qWait(700);
  EXPECT_EQ(file.told.count(), 0);
  EXPECT_EQ(file.watch.state(), FileState::AsKnown);
}

TEST(FileWatch, EachChangeOfAnotherProgramIsNoticed) {
  Watched file;
  for (const char* title : {"first", "second", "third"}) {
    file.told.clear();
    file.writeOutside(title);
    ASSERT_TRUE(file.told.wait(kPatience)) << title;
    EXPECT_EQ(file.watch.state(), FileState::Changed);
    file.watch.accept();
    EXPECT_EQ(file.watch.state(), FileState::AsKnown);
  }
}

TEST(FileWatch, ARemovedFileIsNoticedAndSoIsItsReturn) {
  Watched file;
  ASSERT_TRUE(QFile::remove(file.path));
  ASSERT_TRUE(file.told.wait(kPatience));
  EXPECT_EQ(file.watch.state(), FileState::Gone);
  file.watch.accept();
  EXPECT_EQ(file.watch.state(), FileState::AsKnown);
  file.told.clear();
  file.writeOutside("back");
  ASSERT_TRUE(file.told.wait(kPatience));
  EXPECT_EQ(file.watch.state(), FileState::Changed);
}

TEST(FileWatch, TheFileOfADesignThatWasLeftIsForgotten) {
  Watched file;
  file.session.start(freshDesign(), {});
  file.writeOutside("other");
  QTest::qWait(700);
  EXPECT_EQ(file.told.count(), 0);
}

}  // namespace
}  // namespace creasewright
