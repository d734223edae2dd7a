#include "session/design_session.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <algorithm>

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

TEST(DesignSession, WarningsOfPaperComeAtTheStartAndWhenTheHandRests) {
  DesignSession session;
  int asked = 0;
  session.setWarner([&asked](const BuiltDesign& built) {
    ++asked;
    return Problems{{ProblemCode::ManyPages,
                     {},
                     {static_cast<std::int64_t>(built.design.parameters.mm("depth"))},
                     Severity::Warning}};
  });
  const auto warned = [&] {
    const auto found =
        std::ranges::find(session.problems(), ProblemCode::ManyPages, &Problem::code);
    return found == session.problems().end() ? std::int64_t{-1}
                                             : std::get<std::int64_t>(found->values.at(0));
  };
  EXPECT_EQ(asked, 1);
  EXPECT_EQ(warned(), static_cast<int>(session.design().parameters.mm("depth")));
  for (int mm = 40; mm <= 60; ++mm) setDepth(session, Length::mm(mm));
  EXPECT_EQ(asked, 1) << "while the hand moves nobody is asked";
  QSignalSpy changed(&session, &DesignSession::changed);
  ASSERT_TRUE(changed.wait(5000));
  EXPECT_EQ(asked, 2);
  EXPECT_EQ(warned(), 60);
  setDepth(session, Length::mm(41));
  session.start(session.design(), {});
  EXPECT_EQ(warned(), 41) << "at once for a design that is started";
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
