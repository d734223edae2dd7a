#include "document/making_warnings.h"

#include <gtest/gtest.h>

#include "document/suggest.h"

namespace creasewright {
namespace {

BuiltDesign built(std::string_view style, const char* product, const char* card,
                  Length board = {}) {
  Design design = newDesign(style, parseProduct(product).value(), *findCard(card), Ease::Easy,
                            ToolGrid::millimetre())
                      .value();
  design.board = board;
  return build(design).value();
}

const Problem* warning(const Problems& problems, ProblemCode code) {
  for (const Problem& problem : problems)
    if (problem.code == code) {
      EXPECT_EQ(problem.severity, Severity::Warning);
      return &problem;
    }
  return nullptr;
}

// Folds nearer than 4 mm or ten thicknesses: common practice, no published source.
TEST(MakingWarnings, FoldsCloserThanFourMillimetresOrTenCalipers) {
  const BuiltDesign thin = built("open-sleeve", "box:90x60x1.5mm", "0.24mm");
  const Problem* close = warning(thin.warnings, ProblemCode::FoldsClose);
  ASSERT_NE(close, nullptr);
  EXPECT_EQ(close->where, "front/right");
  EXPECT_EQ(close->values[0], ProblemValue(Length::mm(3)));
  EXPECT_EQ(close->values[1], ProblemValue(Length::mm(4)));
  EXPECT_EQ(
      warning(built("open-sleeve", "box:90x60x6mm", "0.24mm").warnings, ProblemCode::FoldsClose),
      nullptr);
  EXPECT_NE(
      warning(built("open-sleeve", "box:90x60x6mm", "0.9mm").warnings, ProblemCode::FoldsClose),
      nullptr);
}

// Above 0.6 mm a cut-score or two creases: advice of one board mill.
TEST(MakingWarnings, ThickCardThatIsOnlyScored) {
  EXPECT_EQ(
      warning(built("framed-tray", "box:90x60x30mm", "0.6mm").warnings, ProblemCode::CardThick),
      nullptr);
  const BuiltDesign thick = built("framed-tray", "box:90x60x30mm", "0.61mm");
  const Problem* told = warning(thick.warnings, ProblemCode::CardThick);
  ASSERT_NE(told, nullptr);
  EXPECT_EQ(told->where, "tray");
  EXPECT_EQ(
      warning(built("partition-insert", "box:30x30x40mm", "1mm").warnings, ProblemCode::CardThick),
      nullptr);  // nothing is folded
}

TEST(MakingWarnings, BlanksLargerThanTheBoardOrEverySheet) {
  const BuiltDesign box = built("straight-tuck-box", "box:60x35x120mm", "0.24mm", Length::mm(200));
  EXPECT_NE(warning(box.warnings, ProblemCode::BlankOverBoard), nullptr);
  EXPECT_EQ(warning(built("straight-tuck-box", "box:60x35x120mm", "0.24mm").warnings,
                    ProblemCode::BlankOverBoard),
            nullptr);
  const std::vector<Paper> a3{findPaper("a3").value()};
  const std::vector<Paper> a6{findPaper("a6").value()};
  EXPECT_TRUE(sheetWarnings(box, a3).empty());
  ASSERT_EQ(sheetWarnings(box, a6).size(), 1U);
  EXPECT_EQ(sheetWarnings(box, a6)[0].severity, Severity::Warning);
  EXPECT_TRUE(sheetWarnings(box, {}).empty());
}

TEST(MakingWarnings, ADesignWithOnlyWarningsHolds) {
  int warned = 0;
  for (const Suggestion& s : suggest(parseProduct("box:60x35x40mm").value(), *findCard("0.61mm"),
                                     Ease::Easy, ToolGrid::millimetre(), {})) {
    EXPECT_TRUE(s.holds()) << s.style->id;
    if (s.built.warnings.empty()) continue;
    ++warned;
    EXPECT_TRUE(onlyWarnings(everyProblem(s.built))) << s.style->id;
  }
  EXPECT_GE(warned, 25);
}

}  // namespace
}  // namespace creasewright
