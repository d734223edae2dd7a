#include "bridge/label_text.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

TEST(LabelText, NumberedValuesThenTheRestAsAList) {
  const Label label{
      "score-short-line",
      {std::string("corner-left"), std::int64_t{4}, Length::inches(9, 4), Length::inches(17, 2)},
      {}};
  EXPECT_EQ(labelText(label, Unit::Inch).toStdString(),
            "Score at 2¹⁄₄ in, 8¹⁄₂ in from the left corner, from the edge down to line 4.");
}

TEST(LabelText, DepthIsNoMemberOfTheList) {
  const Label label{
      "score-short-depth", {std::string("corner-top"), Length::mm(20), Length::mm(30)}, {}};
  EXPECT_EQ(labelText(label, Unit::Millimetre).toStdString(),
            "Score at 30 mm from the top corner, down to a depth of 20 mm.");
}

TEST(LabelText, LiteralsStayAsTheyAre) {
  EXPECT_EQ(labelText(Label::plain("Jam % %1 & <tea>"), Unit::Inch), "Jam % %1 & <tea>");
}

TEST(LabelText, PercentSignsInValuesAreLeftAlone) {
  EXPECT_EQ(labelText({"parameter", {std::string("50%2"), std::string("%1")}, {}}, Unit::Inch),
            "50%2: %1");
}

TEST(LabelText, UnknownCodeShowsItself) {
  EXPECT_EQ(labelText({"no-such-code", {}, {}}, Unit::Inch), "no-such-code");
}

}  // namespace
}  // namespace creasewright
