#include "folding/surfaces/hidden_plates.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/folding/surfaces/eye_ray.h"
#include "core/folding/surfaces/loose_pieces.h"
#include "core/folding/test_nets.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

const Point3 kUpright{0, 0, 1};

View anyView(std::mt19937_64& generator) {
  return {Angle::degrees(testing::randomIn(generator, -180, 180)),
          Angle::degrees(testing::randomIn(generator, -80, 80))};
}

bool panelIsNearer(const Net& net, const Pose& placed, const Camera& eye, Point3 point) {
  const Point seen = eye.project(point);
  for (std::size_t i = 0; i < net.panels.size(); ++i)
    if (testing::hit(net.panels[i], placed[i], eye, seen) > eye.nearness(point)) return true;
  return false;
}

bool isAmong(const std::vector<Plate>& plates, const Plate& wanted) {
  return std::ranges::any_of(plates, [&](const Plate& plate) {
    return plate.owner == wanted.owner && plate.shape.front().outer == wanted.shape.front().outer &&
           distance(plate.frame.apply(Point{}), wanted.frame.apply(Point{})) == 0;
  });
}

Point3 middleOf(const Plate& plate) {
  Point3 sum;
  for (const Point& corner : plate.shape.front().outer) sum = sum + plate.frame.apply(corner);
  return sum / static_cast<double>(plate.shape.front().outer.size());
}

/// What goes is behind a panel at the middle and near each corner; edges left stand for the same
/// plates as before. Counts the plates that go.
int expectOnlyHiddenGo(const Net& net, const Pose& placed, const std::vector<Solid>& solids,
                       const Camera& eye) {
  const SceneParts all = sceneParts(net, placed, solids, eye.towardsEye);
  SceneParts left = all;
  leaveOutHidden(left, eye, 1e-7 * all.size);
  int gone = 0;
  for (const Plate& plate : all.plates) {
    if (isAmong(left.plates, plate)) continue;
    ++gone;
    const Point3 middle = middleOf(plate);
    for (const Point& corner : plate.shape.front().outer)
      EXPECT_TRUE(
          panelIsNearer(net, placed, eye, middle + (plate.frame.apply(corner) - middle) * 0.999));
  }
  for (const SpaceEdge& edge : left.edges)
    for (const int plate : edge.plates) EXPECT_LT(plate, static_cast<int>(left.plates.size()));
  return gone;
}

TEST(HiddenPlates, OnlyWhatARayDoesNotReachGoes) {
  auto generator = testing::seededGenerator();
  const auto in = [&](double low, double high) { return testing::randomIn(generator, low, high); };
  int gone = 0;
  const Net net = testing::loosePieces(6);
  for (int round = 0; round < 60; ++round) {
    const Pose placed = testing::randomPlaces(6, generator);
    const Solid ball = creasewright::placed(
        sphereSolid(15), Transform::translation({in(-20, 20), in(-20, 20), in(-30, 20)}));
    gone += expectOnlyHiddenGo(net, placed, {ball}, camera(anyView(generator), kUpright));
  }
  EXPECT_GT(gone, 500);
}

TEST(HiddenPlates, OnlyWhatARayDoesNotReachGoesFromFoldingStyles) {
  auto generator = testing::seededGenerator();
  int gone = 0;
  for (const Style& style : styles()) {
    for (const Piece& piece :
         style.build(standardParameters(style), {Length::mm(0.3), ToolGrid()})) {
      for (int round = 0; round < 10; ++round) {
        const Pose placed = pose(piece.net, testing::randomIn(generator, 0.8, 1));
        gone += expectOnlyHiddenGo(piece.net, placed, {}, camera(anyView(generator), kUpright));
      }
    }
  }
  EXPECT_GT(gone, 50);
}

TEST(HiddenPlates, ABallUnderACardGoesWithItsEdges) {
  Net net;
  Panel card;
  card.id = "card";
  card.outline = {{-30, -30}, {30, -30}, {30, 30}, {-30, 30}};
  net.panels.push_back(card);
  const Solid under = placed(sphereSolid(20), Transform::translation({0, 0, -30}));
  const Solid aside = placed(sphereSolid(20), Transform::translation({50, 0, -30}));
  const Camera above = camera({Angle(), Angle::degrees(89)}, kUpright);
  const auto left = [&](const std::vector<Solid>& solids) {
    SceneParts parts = sceneParts(net, {Transform()}, solids, above.towardsEye);
    leaveOutHidden(parts, above, 1e-6);
    return std::pair(parts.plates.size(), parts.edges.size());
  };
  const auto alone = left({});
  EXPECT_EQ(left({under}), alone);
  EXPECT_GT(left({aside}).first, alone.first);
  EXPECT_GT(left({aside}).second, alone.second);
  EXPECT_EQ(left({under, aside}), left({aside}));
}

TEST(HiddenPlates, OfAClosedCubeTheThreeFacesTowardsTheEyeStay) {
  Net net;
  Pose placed;
  const auto add = [&](const char* id, Transform frame) {
    Panel panel;
    panel.id = id;
    panel.outline = {{0, 0}, {40, 0}, {40, 40}, {0, 40}};
    net.panels.push_back(panel);
    placed.push_back(frame);
  };
  add("bottom", Transform());
  add("top", Transform::translation({0, 0, 40}));
  add("front", Transform::frame({0, 0, 0}, {1, 0, 0}, {0, 0, 1}));
  add("back", Transform::frame({0, 40, 0}, {1, 0, 0}, {0, 0, 1}));
  add("left", Transform::frame({0, 0, 0}, {0, 1, 0}, {0, 0, 1}));
  add("right", Transform::frame({40, 0, 0}, {0, 1, 0}, {0, 0, 1}));
  const Camera eye = camera({Angle::degrees(-35), Angle::degrees(25)}, kUpright);
  const Solid solid =
      creasewright::placed(boxSolid(20, 20, 20), Transform::translation({20, 20, 1}));
  SceneParts parts = sceneParts(net, placed, {solid}, eye.towardsEye);
  leaveOutHidden(parts, eye, 1e-6);
  std::vector<std::string> stay;
  for (const Plate& plate : parts.plates)
    stay.push_back(plate.owner < 0 ? "solid" : net.panels[plate.owner].id);
  EXPECT_EQ(stay, (std::vector<std::string>{"top", "front", "left"}));
  EXPECT_EQ(parts.edges.size(), 12u);
}

}  // namespace
}  // namespace creasewright
