#include "folding/loop_closure.h"

#include <array>

#include <gtest/gtest.h>

#include "core/folding/test_nets.h"
#include "support/vertices.h"

namespace creasewright {
namespace {

constexpr double kRadius = 50;

double radians(double degrees) { return Angle::degrees(degrees).radians(); }

Shape wedge(double degrees) {
  return {{{0, 0},
           {kRadius, 0},
           {kRadius * std::cos(radians(degrees)), kRadius * std::sin(radians(degrees))}},
          {"inner", "rim", "next"}};
}

/// Four wedges about one point with sectors a, b, 180-a, 180-b; crease i precedes sector i. Crease
/// 2 is driven, 1 and 3 follow, crease 0 closes the loop.
Net vertexNet(double a, double b, const std::array<double, 4>& folds) {
  NetBuilder net({"fold"});
  net.root("s0", wedge(a))
      .hinge({"s0", "next"}, "s1", wedge(b), {folds[1], 1, CreaseKind::Score, false})
      .hinge({"s1", "next"}, "s2", wedge(180 - a), {folds[2], 1})
      .hinge({"s2", "next"}, "s3", wedge(180 - b), {folds[3], 1, CreaseKind::Score, false})
      .loop({"s3", "next"}, "s0", {folds[0], 1});
  return net.take();
}

/// Second fold of a degree-four flat-foldable vertex: tan(r2/2) = tan(r1/2) k, mode A with cosines
/// and mode B with sines of half the sum and half the difference of the sectors. Derived by loop
/// closure below 1e-9; theory Foschi, Hull, Ku, arXiv 2206.12691; Lang & Howell 2018.
double secondFold(char mode, double a, double b, double first) {
  const double sum = radians((a + b) / 2);
  const double difference = radians((a - b) / 2);
  const double k =
      mode == 'A' ? std::cos(sum) / std::cos(difference) : std::sin(sum) / std::sin(difference);
  return 2 * std::atan(std::tan(radians(first) / 2) * k) * 180 / std::numbers::pi;
}

std::array<double, 4> foldsOf(char mode, double a, double b, double first) {
  const double second = secondFold(mode, a, b, first);
  if (mode == 'A') return {first, -second, first, second};
  return {first, second, -first, second};
}

TEST(LoopClosure, DegreeFourVertexFollowsItsFoldAngleRelation) {
  // Table of the two modes for sectors 60, 100 (derived, see secondFold).
  constexpr std::array<double, 4> kModeA{5.6694, 12.1797, 20.9394, 35.4966};
  constexpr std::array<double, 4> kModeB{-75.3025, -117.9432, -141.6961, -157.3238};
  for (const char mode : {'A', 'B'}) {
    const Net net = vertexNet(60, 100, foldsOf(mode, 60, 100, 150));
    FoldPath path(net);
    for (std::size_t i = 0; i < 4; ++i) {
      const double progress = static_cast<double>(i + 1) / 5;
      const auto angles = path.angles(progress);
      ASSERT_TRUE(angles.ok()) << mode << ' ' << progress;
      const double second = mode == 'A' ? kModeA.at(i) : kModeB.at(i);
      const double sign = mode == 'A' ? 1 : -1;
      EXPECT_NEAR((*angles)[0].degrees(), -sign * second, 1e-3) << mode << ' ' << i;
      EXPECT_NEAR((*angles)[1].degrees(), sign * 150 * progress, 1e-9) << mode << ' ' << i;
      EXPECT_NEAR((*angles)[2].degrees(), second, 1e-3) << mode << ' ' << i;
      EXPECT_NEAR((*angles)[3].degrees(), 150 * progress, 1e-3) << mode << ' ' << i;
    }
  }
}

TEST(LoopClosure, RandomVerticesReachTheirDeclaredEnd) {
  auto generator = testing::seededGenerator();
  for (int round = 0; round < 100; ++round) {
    const double a = testing::randomIn(generator, 30, 150);
    double b = testing::randomIn(generator, 30, 150);
    if (std::abs(a - b) < 8 || std::abs(a + b - 180) < 8) continue;  // nearly a straight crease
    const char mode = round % 2 == 0 ? 'A' : 'B';
    const double last = testing::randomIn(generator, 60, 165);
    const Net net = vertexNet(a, b, foldsOf(mode, a, b, last));
    EXPECT_TRUE(checkLoops(net, pose(net, 1)).empty()) << a << ' ' << b << ' ' << mode;
    FoldPath path(net);
    for (const double progress : {0.03, 0.31, 0.5, 0.83, 1 - 1e-9}) {
      const auto angles = path.angles(progress);
      ASSERT_TRUE(angles.ok()) << a << ' ' << b << ' ' << mode << ' ' << progress;
      const double second = secondFold(mode, a, b, last * progress);
      EXPECT_NEAR((*angles)[2].degrees(), second, 1e-2)
          << a << ' ' << b << ' ' << mode << ' ' << progress;
    }
  }
}

TEST(LoopClosure, SamePictureWhateverWasAskedBefore) {
  const Net net = vertexNet(60, 100, foldsOf('A', 60, 100, 150));
  FoldPath path(net);
  const auto late = path.angles(0.77);
  const auto early = path.angles(0.123);
  ASSERT_TRUE(late.ok() && early.ok());
  EXPECT_EQ(*FoldPath(net).angles(0.123), *early);
  EXPECT_EQ(*FoldPath(net).angles(0.77), *late);
}

TEST(LoopClosure, WrongEndIsSaid) {
  std::array<double, 4> folds = foldsOf('A', 60, 100, 150);
  folds[1] += 1;
  const Net net = vertexNet(60, 100, folds);
  EXPECT_FALSE(FoldPath(net).angles(1).ok());
  const Problems problems = checkLoops(net, pose(net, 1));
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].code, ProblemCode::LoopOpen);
  EXPECT_EQ(problems[0].where, "s0");
}

TEST(LoopClosure, LoopCreaseWithAnotherAngleIsSaid) {
  std::array<double, 4> folds = foldsOf('A', 60, 100, 150);
  folds[0] -= 1;
  const Net net = vertexNet(60, 100, folds);
  EXPECT_FALSE(checkLoops(net, pose(net, 1)).empty());
}

TEST(LoopClosure, StuckLoopIsSaid) {
  // Sectors 100, 100, 100, 60 have no flat-foldable motion; the driven crease asks for 170.
  NetBuilder builder({"fold"});
  builder.root("s0", wedge(120))
      .hinge({"s0", "next"}, "s1", wedge(120), {170, 1})
      .hinge({"s1", "next"}, "s2", wedge(120), {170, 1, CreaseKind::Score, false})
      .loop({"s2", "next"}, "s0", {170, 1});
  const Net net = builder.take();
  const auto angles = FoldPath(net).angles(0.5);
  ASSERT_FALSE(angles.ok());
  EXPECT_EQ(angles.problem().code, ProblemCode::LoopOpen);
}

TEST(LoopClosure, NetsWithoutLoopsFoldAsBefore) {
  const Net net = testing::tabbedTray(60, 40, 20, 12);
  for (const double progress : {0.0, 0.3, 1.0}) {
    const Pose folded = foldedPose(net, progress);
    const Pose plain = pose(net, progress);
    for (std::size_t i = 0; i < plain.size(); ++i)
      EXPECT_EQ(folded[i].apply(Point{1, 2}), plain[i].apply(Point{1, 2}));
  }
}

TEST(Vertices, SectorsOfAVertexAndItsTheorems) {
  const Net net = vertexNet(60, 100, foldsOf('B', 60, 100, 150));
  const std::vector<InteriorVertex> vertices = interiorVertices(net, flatten(net));
  ASSERT_EQ(vertices.size(), 1u);
  ASSERT_EQ(vertices[0].sectors.size(), 4u);
  double sum = 0;
  for (const double sector : vertices[0].sectors) sum += sector;
  EXPECT_NEAR(sum, 360, 1e-9);
  // Kawasaki and Maekawa: published theorems (Wikipedia "Kawasaki's theorem", "Maekawa's theorem").
  EXPECT_NEAR(vertices[0].kawasakiExcess(), 0, 1e-9);
  int turns = 0;
  for (const int crease : vertices[0].creases)
    turns += net.creases[static_cast<std::size_t>(crease)].angle.degrees() > 0 ? 1 : -1;
  EXPECT_EQ(std::abs(turns), 2);
}

TEST(Vertices, CornersOfATrayAreNoInteriorVertices) {
  const Net net = testing::tabbedTray(60, 40, 20, 12);
  EXPECT_TRUE(interiorVertices(net, flatten(net)).empty());
}

}  // namespace
}  // namespace creasewright
