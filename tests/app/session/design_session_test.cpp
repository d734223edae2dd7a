#include "session/design_session.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "commands/edits.h"

namespace creasewright {
namespace {

void setDepth(DesignSession& session, Length depth) {
  changeParameter(session, "depth", depth.nm());
}

TEST(DesignSession, AChangeBuildsAnewAndUndoBringsTheOldValueBack) {
  DesignSession session;
  const Design before = session.design();
  const double width = session.built().pieces.at(0).flat.width;
  QSignalSpy changed(&session, &DesignSession::changed);
  setDepth(session, Length::mm(40));
  EXPECT_EQ(changed.count(), 1);
  EXPECT_NE(session.built().pieces.at(0).flat.width, width);
  session.history().undo();
  EXPECT_EQ(session.design(), before);
  EXPECT_DOUBLE_EQ(session.built().pieces.at(0).flat.width, width);
  session.history().redo();
  EXPECT_EQ(session.design().parameters.length("depth"), Length::mm(40));
}

TEST(DesignSession, TypingInOneFieldIsOneStep) {
  DesignSession session;
  const Design before = session.design();
  setDepth(session, Length::mm(38));
  setDepth(session, Length::mm(38.5));
  EXPECT_EQ(session.history().count(), 1);
  changeParameter(session, "frame", Length::mm(12).nm());
  EXPECT_EQ(session.history().count(), 2);
  session.history().undo();
  session.history().undo();
  EXPECT_EQ(session.design(), before);
}

TEST(DesignSession, AnEaseOrGridIsAStepOfItsOwn) {
  DesignSession session;
  changeEase(session, Ease::Loose);
  changeEase(session, Ease::Snug);
  EXPECT_EQ(session.history().count(), 2);
}

TEST(DesignSession, NumbersThatCannotBeBuiltKeepTheLastPictureAndSayWhy) {
  DesignSession session;
  const double width = session.built().pieces.at(0).flat.width;
  changeParameter(session, "tab", Length::mm(900).nm());
  EXPECT_FALSE(session.isCurrent());
  ASSERT_FALSE(session.problems().empty());
  EXPECT_EQ(session.problems().front().where, "tab");
  EXPECT_DOUBLE_EQ(session.built().pieces.at(0).flat.width, width);
}

TEST(DesignSession, SavedAndOpenedItIsTheSameAndClean) {
  const QTemporaryDir folder;
  const QString path = folder.filePath("tray.cwdesign");
  DesignSession session;
  setDepth(session, Length::inches(5, 4));
  changeWords(session, {"Lavender soap", {"soap", " "}, "Use the warm grey."});
  EXPECT_TRUE(session.isDirty());
  ASSERT_FALSE(session.saveAs(path));
  EXPECT_FALSE(session.isDirty());
  setDepth(session, Length::inches(1));
  EXPECT_TRUE(session.isDirty());
  session.history().undo();
  EXPECT_FALSE(session.isDirty());

  DesignSession other;
  ASSERT_FALSE(other.open(path));
  EXPECT_EQ(other.design(), session.design());
  EXPECT_FALSE(other.isDirty());
  EXPECT_EQ(other.displayName(), "Lavender soap");
  EXPECT_EQ(other.design().tags, std::vector<std::string>{"soap"});
  EXPECT_EQ(other.design().notes, "Use the warm grey.");
}

TEST(DesignSession, AFileThatIsNoDesignLeavesTheWorkAlone) {
  const QTemporaryDir folder;
  const QString path = folder.filePath("broken.cwdesign");
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write("{\"format\":");
  file.close();
  DesignSession session;
  setDepth(session, Length::mm(40));
  const Design before = session.design();
  const auto problem = session.open(path);
  ASSERT_TRUE(problem);
  EXPECT_EQ(session.design(), before);
  EXPECT_TRUE(session.isDirty());
}

}  // namespace
}  // namespace creasewright
