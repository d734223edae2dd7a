#include "folding/motion/joined_edges.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/folding/test_nets.h"
#include "folding/motion/needed_bends.h"

namespace creasewright {
namespace {

/// The seam of a tube ends up as an edge like its three creases: along the target's rim, its
/// neighbour turned a quarter towards the inside.
TEST(JoinedEdges, AGluedSeamJoinsAsACreaseDoes) {
  const Net tube = testing::gluedTube(40, 30, 60, 10);
  const Pose folded = pose(tube, 1);
  const std::vector<Angle> angles = foldAngles(tube, 1);
  const std::vector<JoinedEdge> edges = joinedEdges(tube);
  EXPECT_EQ(edges.size(), 2 * tube.creases.size() + 1);
  const auto seam = std::ranges::find(edges, -1, &JoinedEdge::crease);
  ASSERT_NE(seam, edges.end());
  EXPECT_EQ(seam->panel, tube.mates[0].onto);
  EXPECT_EQ(seam->stage, tube.stageCount());
  for (const JoinedEdge& edge : edges) {
    const PlacedEdge placed = placedEdge(tube, edge, folded);
    const Polygon& outline = tube.panels[static_cast<std::size_t>(edge.panel)].outline;
    const Point middle = placed.from + placed.along * (placed.length / 2);
    EXPECT_EQ(locate(middle, outline, 1e-6), Side::Boundary);
    EXPECT_EQ(locate(middle + placed.outward * 0.1, outline), Side::Outside);
    EXPECT_NEAR(turnAt(tube, edge, folded, angles), 90, 1e-6);
  }
}

/// A wall that stands square needs no bend to get there; two that would meet do.
TEST(NeededBends, OnlyThoseWithoutWhichPanelsCollide) {
  const auto walls = [](double height) {
    NetBuilder net({"one"});
    net.root("base", rectangle(60, 60))
        .hinge({"base", "inner"}, "front", rectangle(60, height), {180, 1})
        .hinge({"base", "outer"}, "back", rectangle(60, height), {180, 1})
        .bends(1, BendCode::PetalsOverlap);
    return net.take();
  };
  EXPECT_TRUE(withNeededBends(walls(25), 0.3).bends.empty());
  EXPECT_EQ(withNeededBends(walls(50), 0.3).bends.size(), 1u);
}

}  // namespace
}  // namespace creasewright
