#include "folding/fold_check.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/folding/test_nets.h"

namespace creasewright {
namespace {

constexpr double kCaliper = 0.3;

bool has(const Problems& problems, ProblemCode code) {
  return std::any_of(problems.begin(), problems.end(),
                     [code](const Problem& problem) { return problem.code == code; });
}

/// The folded tabbed tray with its right tab moved after folding.
Problems checkMoved(const Transform& move) {
  const Net net = testing::tabbedTray(60, 40, 20, 12);
  Pose folded = pose(net, 1);
  const int tab = *net.find("tab-right");
  folded[tab] = move.after(folded[tab]);
  return checkMates(net, folded, kCaliper);
}

TEST(FoldCheck, SoundTrayAndTubeHaveNoProblems) {
  const Net tray = testing::tabbedTray(60, 40, 20, 12);
  EXPECT_TRUE(checkMates(tray, pose(tray, 1), kCaliper).empty());
  const Net tube = testing::gluedTube(40, 30, 50, 10);
  EXPECT_TRUE(checkMates(tube, pose(tube, 1), kCaliper).empty());
}

TEST(FoldCheck, UnfoldedTrayDoesNotHold) {
  const Net net = testing::tabbedTray(60, 40, 20, 12);
  EXPECT_TRUE(has(checkMates(net, pose(net, 0), kCaliper), ProblemCode::MateOutsideTarget));
  EXPECT_TRUE(has(checkMates(net, pose(net, 0.5), kCaliper), ProblemCode::MateOffPlane));
}

TEST(FoldCheck, LayerOfCardIsAllowedOnTheStatedFaceOnly) {
  EXPECT_TRUE(checkMoved(Transform::translation({-kCaliper, 0, 0})).empty());
  EXPECT_TRUE(has(checkMoved(Transform::translation({kCaliper, 0, 0})), ProblemCode::MateOffPlane));
  EXPECT_TRUE(checkMoved(Transform::translation({kCaliper / 20, 0, 0})).empty());
}

TEST(FoldCheck, MoreThanOneLayerIsOffPlaneAndNamed) {
  const Problems problems = checkMoved(Transform::translation({-0.5, 0, 0}));
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].code, ProblemCode::MateOffPlane);
  EXPECT_EQ(problems[0].where, "tab-right");
  EXPECT_EQ(problems[0].values, (std::vector<ProblemValue>{std::string("right"), Length::mm(0.5)}));
}

TEST(FoldCheck, TabBeyondTheWallIsOutside) {
  const Problems problems = checkMoved(Transform::translation({0, 0, 2}));
  ASSERT_TRUE(has(problems, ProblemCode::MateOutsideTarget));
  const auto found = std::find_if(problems.begin(), problems.end(), [](const Problem& problem) {
    return problem.code == ProblemCode::MateOutsideTarget;
  });
  // The tab is a trapezoid 20 wide at its crease, 16 outside, 12 deep: moved 2 mm along its crease
  // it stands 2 mm out at the crease, and its bevel of 2 mm just meets the rim.
  EXPECT_NEAR(std::get<double>(found->values[1]), 100 * (2 * 12 / 2.0) / (18 * 12), 1e-3);
}

TEST(FoldCheck, TabAwayFromTheRimMissesIt) {
  EXPECT_TRUE(has(checkMoved(Transform::translation({0, 2, 0})), ProblemCode::CreaseMissesRim));
}

TEST(FoldCheck, CreaseInsideIsFineWhenTheMateSaysSo) {
  Net net = testing::tabbedTray(60, 40, 20, 12);
  for (Mate& mate : net.mates) mate.rim = false;
  Pose folded = pose(net, 1);
  const int tab = *net.find("tab-right");
  folded[tab] = Transform::translation({0, 2, 0}).after(folded[tab]);
  EXPECT_TRUE(checkMates(net, folded, kCaliper).empty());
  folded[tab] = Transform::translation({0, -4, 0}).after(folded[tab]);
  EXPECT_TRUE(has(checkMates(net, folded, kCaliper), ProblemCode::CreaseMissesRim));
}

TEST(FoldCheck, TuckedFlapMayBridgeANotch) {
  Net net = testing::tabbedTray(60, 40, 20, 12);
  // A notch of 4 x 4 mm in the rim of the right wall, where the tab lies.
  net.panels[*net.find("right")].outline = {{0, 0},   {40, 0},  {40, 20}, {36, 20},
                                            {36, 16}, {32, 16}, {32, 20}, {0, 20}};
  EXPECT_TRUE(has(checkMates(net, pose(net, 1), kCaliper), ProblemCode::MateOutsideTarget));
  for (Mate& mate : net.mates) mate.method = Method::Tuck;
  EXPECT_TRUE(checkMates(net, pose(net, 1), kCaliper).empty());
}

TEST(FoldCheck, OneDegreeTooMuchOrTooLittleIsSeen) {
  const Net sound = testing::tabbedTray(60, 40, 20, 12);
  for (std::size_t i = 0; i < sound.creases.size(); ++i) {
    const std::string& child = sound.panels[sound.creases[i].child].id;
    if (child == "back") continue;  // the back wall has no mate
    for (const double change : {-1.0, 1.0}) {
      Net net = sound;
      net.creases[i].angle = Angle::degrees(90 + change);
      EXPECT_FALSE(checkMates(net, pose(net, 1), kCaliper).empty()) << child << ' ' << change;
    }
  }
}

TEST(FoldCheck, UnknownPanelsAreLeftToFindProblems) {
  Net net = testing::tabbedTray(60, 40, 20, 12);
  net.mates.push_back({99, 0, Face::Inside, Method::Glue, true});
  net.mates.push_back({0, -1, Face::Inside, Method::Glue, true});
  EXPECT_TRUE(checkMates(net, pose(net, 1), kCaliper).empty());
}

}  // namespace
}  // namespace creasewright
