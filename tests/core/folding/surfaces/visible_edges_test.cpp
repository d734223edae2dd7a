#include "folding/surfaces/visible_edges.h"

#include <gtest/gtest.h>

#include "core/folding/surfaces/eye_ray.h"
#include "core/folding/surfaces/loose_pieces.h"
#include "core/folding/test_nets.h"
#include "folding/surfaces/scene.h"
#include "folding/surfaces/scene_parts.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

const Point3 kUp{0, 0, 1};

/// Whether a point of an edge is in view, by one ray; nothing when a panel's outline passes within
/// `margin` mm of the ray or a panel within `margin` of the point, where the answer could turn.
std::optional<bool> inView(const Net& net, const Pose& placed, const Camera& eye, Point3 point,
                           const SpaceEdge& edge) {
  constexpr double kMargin = 0.02;
  const Point seen = eye.project(point);
  const double own = eye.nearness(point);
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const int index = static_cast<int>(i);
    if (edge.plates[0] == index || edge.plates[1] == index) continue;
    const double here = testing::hit(net.panels[i], placed[i], eye, seen);
    for (const Point aside :
         {Point{kMargin, 0}, Point{-kMargin, 0}, Point{0, kMargin}, Point{0, -kMargin}}) {
      const double there = testing::hit(net.panels[i], placed[i], eye, seen + aside);
      if (std::isinf(there) != std::isinf(here)) return std::nullopt;
    }
    if (std::isinf(here)) continue;
    if (std::abs(here - own) < 1e-3) return std::nullopt;
    if (here > own) return false;
  }
  return true;
}

bool drawn(const std::vector<VisibleEdge>& parts, Point p) {
  for (const VisibleEdge& part : parts)
    if (distanceToSegment(p, part.line) < 1e-6) return true;
  return false;
}

void expectVisibleLikeSeen(const Net& net, const Pose& placed, std::mt19937_64& generator,
                           int& shown, int& hidden) {
  const View view{Angle::degrees(testing::randomIn(generator, -180, 180)),
                  Angle::degrees(testing::randomIn(generator, -80, 80))};
  const Camera eye = camera(view, kUp);
  const SceneParts parts = sceneParts(net, placed, {}, eye.towardsEye);
  for (const SpaceEdge& edge : parts.edges) {
    const auto visible = visibleEdges({edge}, parts.plates, eye, 1e-7 * parts.size);
    if (distance(eye.project(edge.a), eye.project(edge.b)) < 0.1) continue;
    for (int sample = 0; sample < 10; ++sample) {
      const Point3 p = edge.a + (edge.b - edge.a) * testing::randomIn(generator, 0.01, 0.99);
      const std::optional<bool> expected = inView(net, placed, eye, p, edge);
      if (!expected) continue;
      EXPECT_EQ(drawn(visible, eye.project(p)), *expected);
      ++(*expected ? shown : hidden);
    }
  }
}

TEST(VisibleEdges, AgreeWithEyeRaysOnCrossingPieces) {
  auto generator = testing::seededGenerator();
  int shown = 0;
  int hidden = 0;
  for (int round = 0; round < 20; ++round) {
    Net net;
    for (int i = 0; i < 10; ++i) {
      Panel panel;
      panel.id = "piece-" + std::to_string(i);
      panel.outline = {{-30, -20}, {30, -20}, {30, 20}, {0, -5}, {-30, 20}};
      if (i % 2 == 1) {
        panel.outline = {{-30, -20}, {30, -20}, {30, 20}, {-30, 20}};
        panel.openings = {{{-20, -10}, {-20, 10}, {15, 10}, {15, -10}}};
      }
      net.panels.push_back(panel);
    }
    const Pose placed = testing::randomPlaces(net.panels.size(), generator);
    expectVisibleLikeSeen(net, placed, generator, shown, hidden);
  }
  EXPECT_GT(shown, 500);
  EXPECT_GT(hidden, 500);
}

TEST(VisibleEdges, AgreeWithEyeRaysOnFoldingStyles) {
  auto generator = testing::seededGenerator();
  int shown = 0;
  int hidden = 0;
  for (const Style& style : styles()) {
    for (const Piece& piece :
         style.build(standardParameters(style), {Length::mm(0.3), ToolGrid()})) {
      for (int round = 0; round < 10; ++round) {
        const Pose placed = pose(piece.net, testing::randomIn(generator, 0, 1));
        expectVisibleLikeSeen(piece.net, placed, generator, shown, hidden);
      }
    }
  }
  EXPECT_GT(shown, 500);
  EXPECT_GT(hidden, 500);
}

TEST(VisibleEdges, WallStandingOnACardShowsItsFootFromItsOwnSideOnly) {
  // A card in the plane z = 0 and the foot of a wall that stands on its middle.
  const Plate card{Transform(), region({{-50, -50}, {50, -50}, {50, 50}, {-50, 50}}), {}, 0};
  const Plate wall{Transform::frame({0, 0, 0}, {1, 0, 0}, {0, 0, 1}),
                   region({{-10, 0}, {10, 0}, {10, 20}, {-10, 20}}),
                   {},
                   1};
  const SpaceEdge foot{{-10, 0, 0}, {10, 0, 0}, {1, -1}, false};
  const Camera above = camera({Angle(), Angle::degrees(40)}, kUp);
  const Camera below = camera({Angle(), Angle::degrees(-40)}, kUp);
  EXPECT_EQ(visibleEdges({foot}, {card, wall}, above, 1e-6).size(), 1u);
  EXPECT_TRUE(visibleEdges({foot}, {card, wall}, below, 1e-6).empty());
}

TEST(VisibleEdges, TheOrderOfThePlatesIsNoMatter) {
  const Plate card{Transform(), region({{-50, -50}, {50, -50}, {50, 50}, {-50, 50}}), {}, 0};
  const Plate wall{Transform::frame({0, 0, 0}, {1, 0, 0}, {0, 0, 1}),
                   region({{-10, 0}, {10, 0}, {10, 20}, {-10, 20}}),
                   {},
                   1};
  const SpaceEdge foot{{-10, 0, 0}, {10, 0, 0}, {0, -1}, false};
  const Camera above = camera({Angle(), Angle::degrees(40)}, kUp);
  const Camera below = camera({Angle(), Angle::degrees(-40)}, kUp);
  EXPECT_EQ(visibleEdges({foot}, {wall, card}, above, 1e-6).size(), 1u);
  EXPECT_TRUE(visibleEdges({foot}, {wall, card}, below, 1e-6).empty());
}

TEST(VisibleEdges, AHalfHiddenEdgeIsCutWhereItGoesUnder) {
  const Plate card{
      Transform::translation({0, 0, 5}), region({{0, -50}, {50, -50}, {50, 50}, {0, 50}}), {}, 0};
  const SpaceEdge edge{{-30, 0, 0}, {20, 0, 0}, {-1, -1}, true};
  const Camera above = camera({Angle(), Angle::degrees(90)}, kUp);
  const auto visible = visibleEdges({edge}, {card}, above, 1e-6);
  ASSERT_EQ(visible.size(), 1u);
  EXPECT_NEAR(visible[0].line.a.x, -30, 1e-9);
  EXPECT_NEAR(visible[0].line.b.x, 0, 1e-9);
  EXPECT_TRUE(visible[0].crease);
}

}  // namespace
}  // namespace creasewright
