#include "folding/cavity/outside.h"

#include <gtest/gtest.h>

#include "core/folding/test_nets.h"

namespace creasewright {
namespace {

constexpr double kThickness = 0.4;

CavitySize outsideOf(const Net& net, const Cavity& cavity, double progress = 1) {
  return measureOutside(net, pose(net, progress), cavity, kThickness);
}

/// The panels are mid-surfaces: half a caliper on either side. An open top ends at the walls' rims,
/// and half a caliper above them counts too.
TEST(Outside, TrayIsItsScoredSizeAndOneCaliper) {
  const Net tray = testing::plainTray(80, 50, 30).take();
  const CavitySize size = outsideOf(tray, {"base", {40, 25, 15}});
  EXPECT_NEAR(size.length, 80 + kThickness, 1e-9);
  EXPECT_NEAR(size.width, 50 + kThickness, 1e-9);
  EXPECT_NEAR(size.height, 30 + kThickness, 1e-9);
}

TEST(Outside, AxesFollowTheCavity) {
  const Net tray = testing::plainTray(80, 50, 30).take();
  const CavitySize size = outsideOf(tray, {"base", {40, 25, 15}, {2, 0, 1}});
  EXPECT_NEAR(size.length, 30 + kThickness, 1e-9);
  EXPECT_NEAR(size.width, 80 + kThickness, 1e-9);
  EXPECT_NEAR(size.height, 50 + kThickness, 1e-9);
}

/// Any panel can give the frame: from a wall of the tray (x along its foot, y up) the sizes are the
/// same.
TEST(Outside, AnyPanelGivesTheFrame) {
  const Net tray = testing::plainTray(80, 50, 30).take();
  const CavitySize size = outsideOf(tray, {"front", {40, 15, 25}, {0, 2, 1}});
  EXPECT_NEAR(size.length, 80 + kThickness, 1e-9);
  EXPECT_NEAR(size.width, 50 + kThickness, 1e-9);
  EXPECT_NEAR(size.height, 30 + kThickness, 1e-9);
}

/// A frustum of bottom 60, top 40 is widest at its base.
TEST(Outside, WidestPlaceCounts) {
  const Net tray = testing::taperedTray(60, 40, 30);
  const CavitySize upright = outsideOf(tray, {"base", {30, 30, 15}});
  EXPECT_NEAR(upright.length, 60 + kThickness, 1e-9);
  EXPECT_NEAR(upright.height, 30 + kThickness, 1e-9);
}

/// Flat, the net is as long as base and two walls, and one card thick.
TEST(Outside, FlatNetIsOneCardThick) {
  const Net tray = testing::plainTray(80, 50, 30).take();
  const CavitySize size = outsideOf(tray, {"base", {40, 25, 0}}, 0);
  EXPECT_NEAR(size.length, 80 + 2 * 30 + kThickness, 1e-9);
  EXPECT_NEAR(size.width, 50 + 2 * 30 + kThickness, 1e-9);
  EXPECT_NEAR(size.height, kThickness, 1e-9);
}

TEST(Outside, UnknownPanelHasNoSize) {
  const Net tray = testing::plainTray(80, 50, 30).take();
  const CavitySize size = outsideOf(tray, {"lid", {}});
  EXPECT_EQ(size.length, 0);
  EXPECT_EQ(size.width, 0);
  EXPECT_EQ(size.height, 0);
}

}  // namespace
}  // namespace creasewright
