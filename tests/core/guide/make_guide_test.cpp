#include "guide/make_guide.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "support/trade_tray.h"

namespace creasewright {
namespace {

Guide guideOf(const char* style, const Parameters& parameters) {
  Design design;
  design.styleId = style;
  design.title = "Soap for the Alder Mill Paper Circle";
  design.parameters = parameters;
  const auto built = build(design);
  EXPECT_TRUE(built);
  return makeGuide(*built);
}

Guide guideOf(const char* style) { return guideOf(style, standardParameters(**findStyle(style))); }

Guide tradeTrayGuide() { return guideOf("framed-tray", testing::tradeTray()); }

std::vector<StepCode> codes(const Guide& guide) {
  std::vector<StepCode> list;
  for (const Step& step : guide.steps) list.push_back(step.code);
  return list;
}

const Step& find(const Guide& guide, StepCode code) {
  return *std::ranges::find(guide.steps, code, &Step::code);
}

std::vector<double> sixteenths(const ScoreSetup& setup) {
  std::vector<double> list;
  for (const ScoreReading& reading : setup.readings) list.push_back(reading.at.inches() * 16);
  return list;
}

using S = StepCode;

/// The stages that are folded, in the order told.
std::vector<std::string> stagesTold(const Guide& guide) {
  std::vector<std::string> told;
  for (const Step& step : guide.steps)
    for (const ToldStage& stage : step.stages) told.push_back(stage.code);
  return told;
}

/// The bends of all steps.
std::vector<BendCode> bendsTold(const Guide& guide) {
  std::vector<BendCode> told;
  for (const Step& step : guide.steps)
    told.insert(told.end(), step.bends.begin(), step.bends.end());
  return told;
}

// Flat work as makers order it: common practice, no published source. Then the tabs are inside the
// long walls before these are rolled over them.
TEST(MakeGuide, FramedTrayIsMadeInAnOrderThatHandsCanFollow) {
  const Guide guide = tradeTrayGuide();
  std::vector<StepCode> order = codes(guide);
  order.erase(std::unique(order.begin(), order.end()), order.end());
  EXPECT_EQ(order, (std::vector{S::TrimBlank, S::ScoreSides, S::ShortScores, S::FoldAndBurnish,
                                S::CutWaste, S::CutMitres, S::CutNotches, S::ApplyAdhesive,
                                S::FoldStage, S::PutIn}));
  EXPECT_EQ(stagesTold(guide),
            (std::vector<std::string>{"shape-long-sides", "fold-tabs", "raise-short-sides",
                                      "long-sides-to-tabs", "long-sides-over-tabs",
                                      "shape-short-sides", "short-sides-over-long"}));
  EXPECT_TRUE(bendsTold(guide).empty());
}

/// Makers also roll the long sides first; then the tabs must bend on their way in.
TEST(MakeGuide, LongSidesFirstIsAChoiceWithABend) {
  Parameters parameters = testing::tradeTray();
  parameters.setCount("long-sides-first", 1);
  const Guide guide = guideOf("framed-tray", parameters);
  EXPECT_EQ(stagesTold(guide),
            (std::vector<std::string>{"roll-long-sides", "raise-long-sides", "fold-tabs",
                                      "roll-short-sides", "raise-short-sides"}));
  EXPECT_EQ(bendsTold(guide), std::vector{BendCode::TabsFedIn});
}

TEST(MakeGuide, FramedTrayHasTheTradesMeasures) {
  const Guide guide = tradeTrayGuide();
  const Step& trim = guide.steps.front();
  EXPECT_EQ(trim.width, Length::inches(43, 4));
  EXPECT_EQ(trim.height, Length::inches(31, 4));

  const Step& full = find(guide, S::ScoreSides);
  ASSERT_EQ(full.settings.size(), 1U);
  EXPECT_EQ(full.settings[0].sides.size(), 4U);
  EXPECT_EQ(sixteenths(full.settings[0]), (std::vector<double>{6, 22, 28, 44}));

  const Step& shorts = find(guide, S::ShortScores);
  ASSERT_EQ(shorts.settings.size(), 2U);
  for (const ScoreSetup& setup : shorts.settings) {
    const bool shortSides = setup.sides.front() == SheetSide::Left;
    EXPECT_EQ(setup.sides.size(), 2U);
    EXPECT_EQ(sixteenths(setup),
              (shortSides ? std::vector<double>{50, 74} : std::vector<double>{36, 136}));
    for (const ScoreReading& reading : setup.readings) {
      EXPECT_EQ(reading.toLine, shortSides ? 2 : 4);
      EXPECT_EQ(reading.purpose, ScorePurpose::CutMark);
    }
  }
}

TEST(MakeGuide, FramedTrayIsCutAndGluedAsTheTradeDoes) {
  const Guide guide = tradeTrayGuide();
  const auto strokes = [](const Step& step) {
    std::size_t count = 0;
    for (const Cut& cut : step.cuts) count += 1 + cut.repeats.size();
    return count;
  };
  EXPECT_EQ(strokes(find(guide, S::CutMitres)), 4U);
  EXPECT_EQ(find(guide, S::CutMitres).cuts.size(), 1U);  // the others are its mirror images
  EXPECT_EQ(strokes(find(guide, S::CutNotches)), 8U);    // two on each of four tabs

  // All four outer strips, the four tabs, and the back of the four mitred ends.
  std::vector<Adhesive> adhesive;
  for (const Step& step : guide.steps)
    adhesive.insert(adhesive.end(), step.adhesive.begin(), step.adhesive.end());
  EXPECT_EQ(adhesive.size(), 12U);
  EXPECT_EQ(std::ranges::count_if(adhesive, &Adhesive::patch), 4);
  // A strip of 3/8 in less 1 mm on either side takes tape of 1/4 in.
  EXPECT_EQ(std::ranges::count_if(
                adhesive,
                [](const Adhesive& a) { return a.stage == 5 && a.width == Length::inches(1, 4); }),
            2);
}

TEST(MakeGuide, BellyBandHasTheTradesMeasures) {
  const Guide guide = guideOf("belly-band");
  const Step& trim = guide.steps.front();
  EXPECT_EQ(trim.width, Length::inches(7));
  EXPECT_EQ(trim.height, Length::inches(85, 16));
  const Step& full = find(guide, S::ScoreSides);
  ASSERT_EQ(full.settings.size(), 1U);
  EXPECT_EQ(full.settings[0].sides, std::vector{SheetSide::Left});
  EXPECT_EQ(sixteenths(full.settings[0]), (std::vector<double>{24, 40, 77, 93}));
  EXPECT_EQ(codes(guide)[2], S::FoldAndBurnish);
}

TEST(MakeGuide, SuppliesFollowTheSteps) {
  const Guide guide = tradeTrayGuide();
  ASSERT_FALSE(guide.supplies.empty());
  EXPECT_EQ(guide.supplies[0].kind, SupplyKind::Card);
  EXPECT_EQ(guide.supplies[0].width, Length::inches(43, 4));
  int strips = 0;
  for (const Supply& supply : guide.supplies)
    if (supply.kind != SupplyKind::Card) strips += supply.quantity;
  EXPECT_EQ(strips, 12);
  EXPECT_EQ(guide.cautions.front(), CautionCode::Knife);
}

TEST(MakeGuide, SeveralPiecesAreMadeOneAfterTheOther) {
  const Guide guide = guideOf("two-piece-box");
  ASSERT_EQ(guide.pieces.size(), 2U);
  EXPECT_EQ(guide.steps.front().piece, 0);
  EXPECT_EQ(guide.steps.back().code, S::PutTogether);
  EXPECT_EQ(std::ranges::count(guide.steps, S::TrimBlank, &Step::code), 2);
}

/// The crosses of an exploding box are glued base on base while they lie flat, each with the
/// adhesive that its supplies count, and the walls are raised after that.
TEST(MakeGuide, GluedPiecesAreToldWhileTheyLieFlat) {
  Design design;
  design.styleId = "exploding-box";
  design.parameters = standardParameters(**findStyle("exploding-box"));
  design.parameters.setCount("layers", 3);
  const auto built = build(design);
  ASSERT_TRUE(built);
  const Guide guide = makeGuide(*built);
  const double step = design.parameters.mm("step");
  int strips = 0;
  int joins = 0;
  for (std::size_t i = 0; i < guide.steps.size(); ++i) {
    const Step& told = guide.steps[i];
    for (const Adhesive& adhesive : told.adhesive) strips += adhesive.width != Length();
    if (told.code != S::GluePieces) continue;
    ++joins;
    ASSERT_EQ(told.pieces.size(), 2u);
    const Piece& upper = built->pieces[static_cast<std::size_t>(told.pieces[0])];
    const Piece& lower = built->pieces[static_cast<std::size_t>(told.pieces[1])];
    EXPECT_EQ(upper.held->to, lower.name);
    const auto glue = std::ranges::find_if(guide.steps, [&](const Step& other) {
      return other.piece == told.pieces[0] && other.code == S::ApplyAdhesive;
    });
    ASSERT_LT(glue, guide.steps.begin() + static_cast<std::ptrdiff_t>(i));
    EXPECT_EQ(glue->adhesive.size(), 2u);
    EXPECT_TRUE(glue->figure.turned);
    EXPECT_TRUE(told.turn);  // back again, before it is pressed on
    EXPECT_EQ(told.figure.behind.size(), 2u);
    ASSERT_EQ(told.checks.size(), 1u);
    EXPECT_EQ(told.checks[0].code, CheckCode::RimAllRound);
    EXPECT_NEAR(told.checks[0].a.mm(), step, 1e-6);
    EXPECT_NEAR(told.checks[0].b.mm(), step, 1e-6);
    for (std::size_t k = 0; k < guide.steps.size(); ++k) {
      const Step& other = guide.steps[k];
      if (other.piece != told.pieces[0] && other.piece != told.pieces[1]) continue;
      if (other.code == S::FoldStage) {
        EXPECT_GT(k, i);
      }
      if (other.code == S::FoldAndBurnish) {
        EXPECT_LT(k, i);
      }
    }
  }
  EXPECT_EQ(joins, 2);
  int supplied = 0;
  for (const Supply& supply : guide.supplies)
    if (supply.kind == SupplyKind::Tape) supplied += supply.quantity;
  EXPECT_EQ(supplied, strips);
  const Step& last = guide.steps.back();
  EXPECT_EQ(last.code, S::PutTogether);
  EXPECT_EQ(last.pieces.size(), 2u);  // the glued crosses and the lid
}

}  // namespace
}  // namespace creasewright
