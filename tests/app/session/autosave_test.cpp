#include "session/autosave.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <csignal>

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include "commands/edits.h"
#include "document/design_file.h"

namespace creasewright {
namespace {

void deepen(DesignSession& session, Length depth) { changeParameter(session, "depth", depth.nm()); }

/// What a killed program leaves: its copy, and its lock without an owner.
void dieWith(const Design& design, const QString& folder, const QString& path) {
  const std::string copy = QDir(folder).filePath("recovery-dead.cwdesign").toStdString();
  const pid_t child = ::fork();
  ASSERT_GE(child, 0);
  if (child == 0) {
    auto lock = FileLock::take(QDir(folder).filePath("recovery-dead.lock"));
    const bool good = lock && lock->write(path) && !writeDesignFile(design, copy);
    ::kill(::getpid(), good ? SIGKILL : SIGABRT);
  }
  int status = 0;
  ASSERT_EQ(::waitpid(child, &status, 0), child);
  ASSERT_TRUE(WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL);
}

TEST(Autosave, KeepsUnsavedWorkAndForgetsSavedWork) {
  const QTemporaryDir folder;
  DesignSession session;
  Autosave autosave(session, folder.filePath("recovery"));
  EXPECT_TRUE(autosave.keep());
  EXPECT_FALSE(QFile::exists(autosave.file()));
  deepen(session, Length::mm(33));
  EXPECT_TRUE(autosave.keep());
  EXPECT_TRUE(QFile::exists(autosave.file()));
  ASSERT_FALSE(session.saveAs(folder.filePath("a.cwdesign")));
  EXPECT_FALSE(QFile::exists(autosave.file()));
  EXPECT_TRUE(QDir(folder.filePath("recovery")).isEmpty(QDir::Files)) << "its lock goes too";
}

/// At most five seconds of work may be lost, also of somebody who never pauses.
TEST(Autosave, SteadyWorkIsKeptWithinFiveSeconds) {
  const QTemporaryDir folder;
  DesignSession session;
  Autosave autosave(session, folder.path());
  QElapsedTimer clock;
  clock.start();
  for (int i = 0; !QFile::exists(autosave.file()) && clock.elapsed() < 10'000; ++i) {
    deepen(session, Length::mm(30 + i % 10));
    QTest::qWait(100);
  }
  EXPECT_LT(clock.elapsed(), 5'000);
}

TEST(Autosave, WorkOfARunningProgramIsNotOffered) {
  const QTemporaryDir folder;
  DesignSession session;
  Autosave autosave(session, folder.path());
  deepen(session, Length::mm(33));
  ASSERT_TRUE(autosave.keep());
  EXPECT_TRUE(findRecovery(folder.path()).empty());
}

TEST(Autosave, WorkOfAKilledProgramIsOfferedOnceWithItsFile) {
  const QTemporaryDir folder;
  DesignSession session;
  deepen(session, Length::mm(33));
  dieWith(session.design(), folder.path(), "/somewhere/soap tray.cwdesign");
  {
    const auto found = findRecovery(folder.path());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().design, session.design());
    EXPECT_EQ(found.front().path, "/somewhere/soap tray.cwdesign");
    EXPECT_TRUE(findRecovery(folder.path()).empty()) << "another program must not offer it too";
  }
  const auto again = findRecovery(folder.path());
  ASSERT_EQ(again.size(), 1U) << "looking at it must not lose it";
  DesignSession next;
  next.recover(again.front().design, {});
  EXPECT_TRUE(next.isDirty());
  again.front().discard();
  EXPECT_TRUE(QDir(folder.path()).isEmpty(QDir::Files));
}

/// Copies of earlier versions have no lock beside them.
TEST(Autosave, ACopyWithoutALockIsFound) {
  const QTemporaryDir folder;
  DesignSession session;
  ASSERT_FALSE(
      writeDesignFile(session.design(), folder.filePath("recovery-4711.cwdesign").toStdString()));
  EXPECT_EQ(findRecovery(folder.path()).size(), 1U);
}

TEST(Autosave, ACopyThatCannotBeReadStays) {
  const QTemporaryDir folder;
  QFile broken(folder.filePath("recovery-x.cwdesign"));
  ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
  broken.write("{");
  broken.close();
  EXPECT_TRUE(findRecovery(folder.path()).empty());
  EXPECT_TRUE(broken.exists());
}

}  // namespace
}  // namespace creasewright
