#include <set>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "folding/motion_check.h"

namespace creasewright {
namespace {

constexpr int kSets = 20;
constexpr int kFewestSets = 12;

/// Rigid panels cannot follow their order of folding yet: walls that roll into a ring in one stage
/// meet a wide seam, tabs of several faces close in one stage, gap flaps and the gable's walls
/// likewise.
const std::set<std::string_view> kNotYet{"prism-box-with-lid", "petal-prism-box", "tapered-cup",
                                         "pyramid-box",        "gable-box",       "tetrahedron",
                                         "octahedron",         "icosahedron"};

std::string firstCollision(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces)
    for (const Problem& problem : checkFoldPath(piece.piece.net, built.design.card.caliper.mm()))
      return built.design.styleId + ": " + std::string(codeName(problem.code)) + " at " +
             problem.where;
  return {};
}

/// On the way from flat to folded no panel goes through another, but in stages that declare that
/// the card bends.
TEST(Laws, NoPanelGoesThroughAnotherOnTheWay) {
  testing::Random random(78);
  for (const Style& style : styles()) {
    if (kNotYet.contains(style.id)) continue;
    int tried = 0;
    for (int i = 0; i < kSets; ++i) {
      const auto design = testing::randomInsideLimits(random, style);
      if (!design) continue;
      const auto built = build(*design);
      ASSERT_TRUE(built.ok()) << style.id;
      EXPECT_EQ(firstCollision(*built), "") << style.id;
      ++tried;
    }
    EXPECT_GE(tried, kFewestSets) << style.id;
  }
}

}  // namespace
}  // namespace creasewright
