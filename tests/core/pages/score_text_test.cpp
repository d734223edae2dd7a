#include "pages/score_text.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

ScoreReading reads(Length at) {
  ScoreReading reading;
  reading.at = at;
  return reading;
}

constexpr auto kAll = {SheetSide::Left, SheetSide::Right, SheetSide::Bottom, SheetSide::Top};

TEST(ScoreText, SidesAreNamedByTheShapeOfTheBlank) {
  ScorePlan plan;
  plan.setups.push_back({kAll, {reads(Length::inches(3, 8))}});
  plan.setups.push_back({{SheetSide::Left, SheetSide::Right}, {reads(Length::mm(1))}});
  plan.setups.push_back({{SheetSide::Bottom, SheetSide::Top}, {reads(Length::mm(1))}});
  plan.setups.push_back({{SheetSide::Top}, {reads(Length::mm(1))}});
  const std::vector<ScoreSection> wide = scoreText(plan, 273, 197);
  ASSERT_EQ(wide.size(), 4U);
  EXPECT_EQ(wide[0].heading.code, "score-all-sides");
  EXPECT_EQ(wide[1].heading.code, "score-short-sides");
  EXPECT_EQ(wide[2].heading.code, "score-long-sides");
  EXPECT_EQ(wide[3].heading.code, "score-top");
  EXPECT_EQ(scoreText(plan, 100, 200)[1].heading.code, "score-long-sides");
  EXPECT_EQ(scoreText(plan, 100, 100)[1].heading.code, "score-left-right");
}

TEST(ScoreText, ShortScoresOfOneDepthAreOneSentence) {
  ScoreReading reading{.at = Length::inches(25, 8),
                       .run = ScoreRun::Short,
                       .purpose = ScorePurpose::CutMark,
                       .to = Length::inches(11, 8),
                       .toLine = 2};
  ScorePlan plan;
  plan.setups.push_back({{SheetSide::Left, SheetSide::Right}, {reading}});
  reading.at = Length::inches(37, 8);
  plan.setups[0].readings.push_back(reading);
  reading.purpose = ScorePurpose::Fold;
  plan.setups[0].readings.push_back(reading);
  const std::vector<ScoreSection> sections = scoreText(plan, 273, 197);
  ASSERT_EQ(sections.size(), 1U);
  ASSERT_EQ(sections[0].lines.size(), 2U);
  EXPECT_EQ(sections[0].lines[0].code, "mark-short-line");
  const std::vector<ProblemValue> expected{std::string("corner-bottom"), std::int64_t{2},
                                           Length::inches(25, 8), Length::inches(37, 8)};
  EXPECT_EQ(sections[0].lines[0].values, expected);
  EXPECT_EQ(sections[0].lines[1].code, "score-short-line");
}

TEST(ScoreText, NothingToScoreSaysSo) {
  EXPECT_EQ(scoreText({}, 10, 10).at(0).lines.at(0).code, "score-empty");
}

}  // namespace
}  // namespace creasewright
