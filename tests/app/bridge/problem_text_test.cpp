#include "bridge/problem_text.h"

#include <QRegularExpression>

#include <gtest/gtest.h>

#include "bridge/text.h"

namespace creasewright {
namespace {

/// As many codes as there are: codeName knows no name for numbers past the last one.
constexpr int kLastCode = static_cast<int>(ProblemCode::PunchNotRound);

TEST(ProblemText, EveryCodeHasASentenceWithItsValues) {
  for (int i = 0; i <= kLastCode; ++i) {
    const auto code = static_cast<ProblemCode>(i);
    const Problem problem{code, "somewhere", {Length::mm(18), Length::mm(15), std::int64_t{3}}};
    const QString sentence = problemSentence(problem, Unit::Millimetre);
    EXPECT_FALSE(sentence.isEmpty()) << codeName(code);
    EXPECT_TRUE(sentence.endsWith('.')) << codeName(code);
    EXPECT_FALSE(sentence.contains('!')) << codeName(code);
    EXPECT_FALSE(sentence.contains(QRegularExpression("%\\d"))) << sentence.toStdString();
  }
}

TEST(ProblemText, NamesPlaceValueAndWhatWouldDo) {
  const Problem tab{ProblemCode::ParameterTooLarge, "tab", {Length::inches(3), Length::inches(1)}};
  EXPECT_EQ(problemSentence(tab, Unit::Inch),
            "“Tab width” is 3 in, and 1 in is the most that fits here. Make it 1 in or less.");
}

TEST(ProblemText, AMeasureOfAnExtraTellsWhoseItIs) {
  const Problem span{
      ProblemCode::ParameterTooSmall,
      "span",
      {Length::mm(10), Length::mm(30), std::string("Span"), std::string("made-bow")}};
  EXPECT_EQ(
      problemSentence(span, Unit::Millimetre),
      "“Span” of the extra “Bow” is 10 mm, and 30 mm is the least that works here. Make it 30 "
      "mm or more.");
}

TEST(ProblemText, TextOfTheUserIsNotTakenForAPlaceholder) {
  const Problem odd{ProblemCode::UnknownParameter, "%1 %2", {std::string("%1")}};
  EXPECT_TRUE(problemSentence(odd, Unit::Inch).contains("“%1”"));
}

TEST(ProblemText, AnUnknownMeasureIsSoughtWhereItsOwnerIsListed) {
  for (const auto& [owner, command] :
       {std::pair("straight-tuck-box", "styles"), std::pair("label", "extras"),
        std::pair("layer", "extras"), std::pair("opening", "edits")}) {
    const Problem unknown{ProblemCode::UnknownParameter, owner, {std::string("brim")}};
    const QString sentence = problemSentence(unknown, Unit::Inch);
    EXPECT_TRUE(sentence.contains("“brim”")) << sentence.toStdString();
    EXPECT_TRUE(sentence.contains(QString("“creasewright %1”").arg(command)))
        << sentence.toStdString();
  }
}

TEST(ProblemText, ACardsThicknessIsNoNoughtOfAnInch) {
  const Problem thick{ProblemCode::CardThick, "box", {Length::mm(0.9), Length::mm(0.6)}};
  const QString sentence = problemSentence(thick, Unit::Inch);
  EXPECT_TRUE(sentence.contains("0.9 mm") && sentence.contains("0.6 mm")) << sentence.toStdString();
  EXPECT_EQ(lengthText(Length::mm(0.6), Unit::Inch), "0.6 mm");
}

TEST(LengthText, SetsFractionsAsFractions) {
  EXPECT_EQ(lengthText(Length::inches(37, 16), Unit::Inch), "2⁵⁄₁₆ in");
  EXPECT_EQ(lengthText(Length::inches(3, 8), Unit::Inch, false), "³⁄₈");
  EXPECT_EQ(lengthText(Length::inches(4), Unit::Inch), "4 in");
  EXPECT_EQ(lengthText(Length::mm(58.7), Unit::Millimetre), "58.7 mm");
}

}  // namespace
}  // namespace creasewright
