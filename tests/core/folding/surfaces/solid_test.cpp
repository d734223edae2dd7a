#include "folding/surfaces/solid.h"

#include <limits>
#include <map>

#include <gtest/gtest.h>

#include "core/folding/test_nets.h"
#include "folding/surfaces/scene.h"

namespace creasewright {
namespace {

/// Volume by the divergence theorem: a sum of signed tetrahedra, positive when faces point out.
double volume(const Solid& solid) {
  double six = 0;
  for (const auto& face : solid.faces)
    for (std::size_t i = 1; i + 1 < face.size(); ++i)
      six += dot(face[0], cross(face[i], face[i + 1]));
  return six / 6;
}

struct Extent {
  Point3 low{1e9, 1e9, 1e9};
  Point3 high{-1e9, -1e9, -1e9};
};

Extent extentOf(const Solid& solid) {
  Extent box;
  for (const auto& face : solid.faces) {
    for (const Point3& p : face) {
      box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), std::min(box.low.z, p.z)};
      box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), std::max(box.high.z, p.z)};
    }
  }
  return box;
}

void expectPlaneFaces(const Solid& solid) {
  for (const auto& face : solid.faces) {
    ASSERT_GE(face.size(), 3u);
    const Point3 normal = unit(cross(face[1] - face[0], face[2] - face[1]));
    for (const Point3& p : face) EXPECT_NEAR(dot(normal, p - face[0]), 0, 1e-9);
  }
}

TEST(Solid, VolumesAgreeWithFormulas) {
  EXPECT_NEAR(volume(boxSolid(60, 35, 120)), 60 * 35 * 120, 1e-6);
  const double pi = std::numbers::pi;
  // A prism round the circle is larger by tan(pi/24) / (pi/24).
  EXPECT_NEAR(volume(cylinderSolid(40, 120)), pi * 400 * 120 * std::tan(pi / 24) / (pi / 24), 1e-6);
  const double ball = pi * 42.7 * 42.7 * 42.7 / 6;
  EXPECT_GT(volume(sphereSolid(42.7)), 0.93 * ball);
  EXPECT_LT(volume(sphereSolid(42.7)), 1.01 * ball);
  EXPECT_GT(volume(tubeSolid(35, 20, 110)), 0);
}

TEST(Solid, FacesArePlaneAndSizesAsAsked) {
  for (const Solid& solid :
       {boxSolid(60, 35, 120), cylinderSolid(40, 120), sphereSolid(42), tubeSolid(35, 20, 110)})
    expectPlaneFaces(solid);
  const Extent tube = extentOf(tubeSolid(35, 20, 110));
  EXPECT_NEAR(tube.low.z, 0, 1e-9);
  EXPECT_NEAR(tube.high.z, 110, 1e-9);
  EXPECT_NEAR(tube.high.x - tube.low.x, 35, 0.5);
  EXPECT_NEAR(tube.high.y - tube.low.y, 20, 0.5);
}

TEST(Solid, ProductRestsOnTheBaseInTheMiddle) {
  const Net net = testing::plainTray(60, 40, 20).take();
  const Pose folded = pose(net, 1);
  const Cavity cavity{"base", {30, 20, 10}, {0, 1, 2}, {-1e4, -1e4, -1e4}, {1e4, 1e4, 20}};
  const CavityBox box = cavityBox(net, folded, cavity, 0.4);
  const CavitySize product{50, 30, 12};
  const Transform place = restingPlace(net, folded, cavity, box, product, {0, 0, 1});
  const Extent placedBox = extentOf(placed(boxSolid(50, 30, 12), place));
  EXPECT_NEAR(placedBox.low.x, 5, 1e-6);
  EXPECT_NEAR(placedBox.high.y, 35, 1e-6);
  EXPECT_NEAR(placedBox.low.z, 0.2, 1e-6);
  EXPECT_NEAR(placedBox.high.z, 12.2, 1e-6);
}

TEST(Solid, ProductInATubeStandsUpright) {
  const Net net = testing::gluedTube(40, 30, 50, 10);
  const Pose folded = pose(net, 1);
  const Cavity cavity{"front", {20, 25, 15}, {0, 2, 1}, {-1e4, 0, -1e4}, {1e4, 50, 1e4}};
  const CavityBox box = cavityBox(net, folded, cavity, 0.4);
  for (const Point3 up : {Point3{0, 1, 0}, Point3{0, -1, 0}}) {
    const Transform place = restingPlace(net, folded, cavity, box, {30, 20, 45}, up);
    const Extent placedBox = extentOf(placed(boxSolid(30, 20, 45), place));
    EXPECT_NEAR(placedBox.low.y, up.y > 0 ? 0 : 5, 1e-6);
    EXPECT_NEAR(placedBox.high.x - placedBox.low.x, 30, 1e-6);
    EXPECT_NEAR(dot(place.normal(), up), 1, 1e-9);
  }
}

TEST(Solid, StandsInTheTrayAndIsPartlyHidden) {
  const Net net = testing::plainTray(60, 40, 20).take();
  const Solid product = placed(boxSolid(50, 30, 15), Transform::translation({30, 20, 1}));
  const View view{Angle::degrees(-30), Angle::degrees(35)};
  const Point3 up{0, 0, 1};
  const FoldPicture with = drawFolded(net, pose(net, 1), view, up, {product});
  // The product's top is the last thing over its own middle; the front wall lies over its foot.
  const auto topAt = [&](Point3 p) {
    const Point seen = camera(view, up).project(p);
    int top = -2;
    for (const Facet& facet : with.facets)
      if (locate(seen, facet.outline) == Side::Inside) top = facet.panel;
    return top;
  };
  EXPECT_EQ(topAt({30, 20, 16}), -1);
  EXPECT_EQ(topAt({30, 5, 2}), *net.find("front"));
  const FoldPicture without = drawFolded(net, pose(net, 1), view, up);
  EXPECT_GT(with.edges.size(), without.edges.size());
}

}  // namespace
}  // namespace creasewright
