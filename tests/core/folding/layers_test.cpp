#include "folding/layers.h"

#include <gtest/gtest.h>

#include "core/folding/test_nets.h"

namespace creasewright {
namespace {

constexpr double kLayer = 0.3;
constexpr double kTolerance = 0.01;

/// A strip of `count` squares of 20 mm, each folded flat onto the one before it.
NetBuilder rolledStrip(int count) {
  NetBuilder builder({"roll"});
  builder.root("p0", rectangle(20, 20));
  for (int i = 1; i < count; ++i)
    builder.hinge({"p" + std::to_string(i - 1), "outer"}, "p" + std::to_string(i),
                  rectangle(20, 20), {180, 1});
  return builder;
}

// A hem: its fold lies one card above the panel on whose inside it is folded.
TEST(Layers, AFlapFoldedFlatLiesOneCardAboveItsPanel) {
  const Net net = rolledStrip(2).take();
  const auto offsets = layerOffsets(net, pose(net, 1), kLayer, kTolerance);
  ASSERT_EQ(offsets.size(), 2U);
  EXPECT_EQ(norm(offsets[0]), 0);
  EXPECT_NEAR(offsets[1].z, kLayer, 1e-12);
  EXPECT_NEAR(std::hypot(offsets[1].x, offsets[1].y), 0, 1e-12);
}

// On the way nothing lies on anything.
TEST(Layers, WhatIsNotFoldedHomeStays) {
  Net net = rolledStrip(2).take();
  net.mates.push_back({1, 0});
  for (const double progress : {0.2, 0.5, 0.97})
    for (const Point3& offset : layerOffsets(net, pose(net, progress), kLayer, kTolerance))
      EXPECT_EQ(norm(offset), 0) << progress;
}

// A tray's tabs stand across their walls on the way; home, each lies one card inside its wall.
TEST(Layers, ATabLiesOneCardInsideItsWall) {
  const Net net = testing::tabbedTray(60, 40, 20, 10);
  const Pose folded = pose(net, 1);
  const auto offsets = layerOffsets(net, folded, kLayer, kTolerance);
  for (const Mate& mate : net.mates) {
    const auto tab = static_cast<std::size_t>(mate.panel);
    const Point3 inwards = folded[static_cast<std::size_t>(mate.onto)].normal();
    EXPECT_NEAR(dot(offsets[tab], inwards), kLayer, 1e-9) << net.panels[tab].id;
  }
}

// Four flaps of a pleated closure each lie on the next: the ring is cut somewhere, three of them
// lie above one another and nothing goes on for ever.
TEST(Layers, ARingOfFlapsIsCutOnce) {
  NetBuilder builder({"close"});
  builder.root("base", rectangle(20, 20));
  for (const char* edge : {"inner", "right", "outer", "left"})
    builder.hinge({"base", edge}, edge, rectangle(20, 12), {180, 1});
  Net net = builder.take();
  for (int flap = 1; flap <= 4; ++flap) net.mates.push_back({flap, flap % 4 + 1, Face::Outside});
  const auto offsets = layerOffsets(net, pose(net, 1), kLayer, kTolerance);
  ASSERT_EQ(offsets.size(), 5U);
  double highest = 0;
  for (const Point3& offset : offsets) highest = std::max(highest, std::abs(offset.z));
  EXPECT_GE(highest, 3 * kLayer - 1e-9) << "one above another";
  EXPECT_LE(highest, 5 * kLayer + 1e-9) << "each but once";
}

// A pose of fewer panels than the net has says nothing of the others.
TEST(Layers, WhatHasNoPlaceInThePoseStays) {
  Net net = rolledStrip(3).take();
  Pose folded = pose(net, 1);
  net.mates = {{2, 1}};
  net.creases.pop_back();
  folded.pop_back();
  const auto offsets = layerOffsets(net, folded, kLayer, kTolerance);
  ASSERT_EQ(offsets.size(), 3U);
  EXPECT_EQ(norm(offsets[2]), 0);
  EXPECT_NEAR(offsets[1].z, kLayer, 1e-12);
}

}  // namespace
}  // namespace creasewright
