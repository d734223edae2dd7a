#include "widgets/length_edit.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

void retype(LengthEdit& edit, const QString& words) {
  edit.selectAll();
  QTest::keyClicks(&edit, words);
}

TEST(LengthEdit, ReadsWhatIsTypedInAnyForm) {
  LengthEdit edit;
  edit.setUnit(Unit::Millimetre);
  for (const auto& [typed, expected] :
       std::vector<std::pair<QString, Length>>{{"2 5/16 in", Length::inches(37, 16)},
                                               {"2-5/16\"", Length::inches(37, 16)},
                                               {"58.7", Length::mm(58.7)},
                                               {"5,87 cm", Length::mm(58.7)}}) {
    retype(edit, typed);
    EXPECT_EQ(edit.length(), expected) << typed.toStdString();
    EXPECT_FALSE(edit.isWrong()) << typed.toStdString();
  }
}

TEST(LengthEdit, KeepsTheLastGoodLengthWhileNonsenseStandsThere) {
  LengthEdit edit;
  edit.setLength(Length::mm(12));
  QSignalSpy edited(&edit, &LengthEdit::lengthEdited);
  retype(edit, "a");
  EXPECT_EQ(edit.length(), Length::mm(12));
  EXPECT_TRUE(edit.isWrong());
  EXPECT_TRUE(edit.toolTip().contains("a")) << edit.toolTip().toStdString();
  EXPECT_EQ(edited.count(), 0);
}

TEST(LengthEdit, UpAndDownStep) {
  LengthEdit edit;
  edit.setUnit(Unit::Inch);
  edit.setStep(Length::inches(1, 16));
  edit.setLength(Length::inches(1));
  QTest::keyClick(&edit, Qt::Key_Up);
  EXPECT_EQ(edit.length(), Length::inches(17, 16));
  EXPECT_EQ(edit.text(), "1 1/16 in");
  QTest::keyClick(&edit, Qt::Key_Down);
  QTest::keyClick(&edit, Qt::Key_Down);
  EXPECT_EQ(edit.text(), "15/16 in");
}

TEST(LengthEdit, ShowsTheSameLengthInTheOtherUnit) {
  LengthEdit edit;
  edit.setLength(Length::inches(1, 2));
  edit.setUnit(Unit::Millimetre);
  EXPECT_EQ(edit.text(), "12.7 mm");
  edit.setUnit(Unit::Inch);
  EXPECT_EQ(edit.text(), "1/2 in");
}

TEST(LengthEdit, AComplaintMarksTheFieldUntilItGoes) {
  LengthEdit edit;
  edit.setComplaint("Too wide.");
  EXPECT_TRUE(edit.isWrong());
  EXPECT_EQ(edit.toolTip(), "Too wide.");
  edit.setComplaint({});
  EXPECT_FALSE(edit.isWrong());
}

}  // namespace
}  // namespace creasewright
