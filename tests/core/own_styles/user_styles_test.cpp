// Twelve styles made through changes by hand only: kept, saved, read back equal, moved to three
// more products each, judged by every check and every law, and folded.

#include "support/user_styles.h"

#include <gtest/gtest.h>

#include "core/laws/law_book.h"
#include "document/build.h"
#include "document/design_file.h"
#include "document/own_style_file.h"
#include "folding/edge_meetings.h"
#include "folding/loop_closure.h"

namespace creasewright {
namespace {

using testing::UserStyle;

class UserStyles : public ::testing::TestWithParam<UserStyle> {};

/// A change may measure a fixed 12 mm, which no doubled measure of a style doubles.
bool canJudge(const testing::Law& law, const Design& design) {
  return law.judge != testing::doubledMeasuresDoubleTheNet || allEdits(design).empty();
}

void judge(const Design& design, const std::string& what) {
  const Result<BuiltDesign> built = build(design);
  ASSERT_TRUE(built.ok()) << what << ' ' << codeName(built.problem().code);
  for (const Problem& problem : everyProblem(*built)) {
    const bool hint = problem.code == ProblemCode::FoldsClose;
    EXPECT_TRUE(hint) << what << ": " << codeName(problem.code) << ' ' << problem.where;
  }
  for (const testing::Law& law : testing::lawBook())
    if (canJudge(law, design)) {
      EXPECT_EQ(law.judge(*built), "") << law.name << " of " << what;
    }
  for (const BuiltPiece& piece : built->pieces) {
    FoldPath path(piece.net);
    for (const double progress : {0.31, 0.64, 1.0})
      EXPECT_TRUE(path.pose(progress).ok()) << what << " at " << progress;
  }
}

TEST_P(UserStyles, IsKeptReadBackMovedAndFolded) {
  const UserStyle& user = GetParam();
  const Result<OwnStyle> style = testing::kept(user);
  ASSERT_TRUE(style.ok()) << codeName(style.problem().code) << ' ' << style.problem().where;
  EXPECT_EQ(style->edits.size(), user.edits.size());
  const Result<OwnStyle> read = readOwnStyle(writeOwnStyle(*style), "a");
  ASSERT_TRUE(read.ok()) << codeName(read.problem().code) << ' ' << read.problem().where;
  EXPECT_EQ(*read, *style);
  for (const std::string& product : user.products) {
    const Design design = *newDesign(*read, parseProduct(product).value(), cards().front(),
                                     Ease::Easy, ToolGrid::millimetre());
    const Result<Design> again = readDesign(writeDesign(design), "a");
    ASSERT_TRUE(again.ok());
    EXPECT_EQ(*again, design);
    judge(*again, user.name + " for " + product);
  }
}

INSTANTIATE_TEST_SUITE_P(All, UserStyles, ::testing::ValuesIn(testing::userStyles()),
                         [](const auto& tested) {
                           std::string name = tested.param.name;
                           std::ranges::replace_if(
                               name, [](unsigned char c) { return std::isalnum(c) == 0; }, '_');
                           return name;
                         });

TEST(UserStylesList, HoldsTwelve) { EXPECT_EQ(testing::userStyles().size(), 12u); }

}  // namespace
}  // namespace creasewright
