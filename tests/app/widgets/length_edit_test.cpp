#include "widgets/length_edit.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

void typeInto(LengthEdit& edit, const QString& words) {
  edit.selectAll();
  QTest::keyClicks(&edit, words);
}

void retype(LengthEdit& edit, const QString& words) {
  typeInto(edit, words);
  QTest::keyClick(&edit, Qt::Key_Return);
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
  EXPECT_EQ(edit.text(), "a") << "it stays to be mended";
}

/// The beginnings of these are lengths of their own: none of them may be taken for what is meant.
TEST(LengthEdit, HalfTypedTextChangesNothing) {
  for (const char* words : {"1 1/2+1/8", "105x32x22mm", "1 1/", "2 5/16 inn"}) {
    const QString typed = words;
    LengthEdit edit;
    edit.setUnit(Unit::Inch);
    edit.setLength(Length::inches(3));
    QSignalSpy edited(&edit, &LengthEdit::lengthEdited);
    QSignalSpy told(&edit, &LengthEdit::sentenceChanged);
    typeInto(edit, typed);
    EXPECT_EQ(told.count(), 0) << "who still types is not told off";
    QTest::keyClick(&edit, Qt::Key_Return);
    EXPECT_EQ(edited.count(), 0) << typed.toStdString();
    EXPECT_EQ(edit.length(), Length::inches(3)) << typed.toStdString();
    EXPECT_EQ(edit.text(), typed);
    ASSERT_EQ(told.count(), 1) << typed.toStdString();
    EXPECT_TRUE(told.front().front().toString().contains(typed));
    edit.setLength(Length::inches(3));
    EXPECT_EQ(edit.text(), typed) << "a redraw leaves it there";
    QTest::keyClick(&edit, Qt::Key_Escape);
    EXPECT_EQ(edit.text(), "3 in");
    EXPECT_FALSE(edit.isWrong());
  }
}

TEST(LengthEdit, TakesSumsAndTheNamesOfOtherMeasures) {
  LengthEdit edit;
  edit.setUnit(Unit::Inch);
  edit.setNames([](std::string_view name) -> std::optional<Result<Length>> {
    if (name != "depth") return std::nullopt;
    return Length::inches(2);
  });
  const std::pair<const char*, Length> sums[] = {{"1 1/2 in + 1/8 in", Length::inches(13, 8)},
                                                 {"depth / 2 - 1/4 in", Length::inches(3, 4)},
                                                 {"3 + 1/2", Length::inches(7, 2)},
                                                 {"2 * 6 mm", Length::mm(12)}};
  for (const auto& [words, wanted] : sums) {
    retype(edit, QString::fromLatin1(words));
    QTest::keyClick(&edit, Qt::Key_Return);
    EXPECT_EQ(edit.length(), wanted) << words;
    EXPECT_FALSE(edit.isWrong()) << words;
  }
  for (const char* wrong : {"height / 2", "depth / 0", "1 in - 2 in", "depth * depth"}) {
    retype(edit, QString::fromLatin1(wrong));
    QTest::keyClick(&edit, Qt::Key_Return);
    EXPECT_EQ(edit.length(), Length::mm(12)) << wrong;
    EXPECT_TRUE(edit.isWrong()) << wrong;
    QTest::keyClick(&edit, Qt::Key_Escape);
  }
}

TEST(LengthEdit, WhatIsTypedCountsWhenTheFieldIsLeft) {
  QWidget window;
  LengthEdit edit(&window);
  QLineEdit other(&window);
  window.show();
  window.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  edit.setFocus();
  typeInto(edit, "31");
  EXPECT_EQ(edit.length(), Length()) << "not yet";
  other.setFocus();
  EXPECT_EQ(edit.length(), Length::mm(31));
  EXPECT_EQ(edit.text(), "31 mm");
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
