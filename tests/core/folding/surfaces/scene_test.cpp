#include "folding/surfaces/scene.h"

#include <algorithm>
#include <map>

#include <gtest/gtest.h>

#include "core/folding/surfaces/eye_ray.h"
#include "core/folding/surfaces/loose_pieces.h"
#include "core/folding/test_nets.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr int kNone = -1;
const Point3 kUpwards{0, 0, 1};

/// What a painter leaves at a point: the last facet over it.
int paintedAt(const FoldPicture& picture, Point p) {
  int top = kNone;
  for (const Facet& facet : picture.facets)
    if (testing::inRing(p, facet.outline)) top = facet.panel;
  return top;
}

/// Compares painting with casting one ray through every pixel of a raster of 60 x 60, leaving out
/// pixels that have another panel within one pixel. Returns the number of pixels compared.
int expectPaintedLikeSeen(const Net& net, const Pose& placed, const View& view,
                          const std::string& name) {
  constexpr int kRaster = 60;
  const FoldPicture picture = drawFolded(net, placed, view, kUpwards);
  const Camera eye = camera(view, kUpwards);
  const Bounds box = picture.extent;
  const Point pixel{box.width() / kRaster, box.height() / kRaster};
  const auto at = [&](int x, int y) {
    return Point{box.low.x + (x + 0.4371) * pixel.x, box.low.y + (y + 0.5719) * pixel.y};
  };
  std::vector<int> seen;
  for (int y = 0; y < kRaster; ++y)
    for (int x = 0; x < kRaster; ++x)
      seen.push_back(testing::nearestPanel(net, placed, eye, at(x, y)));
  int compared = 0;
  int wrong = 0;
  for (int y = 1; y + 1 < kRaster; ++y) {
    for (int x = 1; x + 1 < kRaster; ++x) {
      const int panel = seen[y * kRaster + x];
      bool steady = panel != kNone;
      for (int near = 0; near < 9; ++near)
        steady = steady && seen[(y + near / 3 - 1) * kRaster + x + near % 3 - 1] == panel;
      if (!steady) continue;
      ++compared;
      if (paintedAt(picture, at(x, y)) != panel) ++wrong;
    }
  }
  EXPECT_EQ(wrong, 0) << name << ", of " << compared;
  return compared;
}

View randomView(std::mt19937_64& generator) {
  return {Angle::degrees(testing::randomIn(generator, -180, 180)),
          Angle::degrees(testing::randomIn(generator, -89, 89))};
}

TEST(Scene, CrossingPiecesArePaintedLikeSeen) {
  auto generator = testing::seededGenerator();
  const Net net = testing::loosePieces(12);
  int compared = 0;
  for (int round = 0; round < 30; ++round)
    compared += expectPaintedLikeSeen(net, testing::randomPlaces(12, generator),
                                      randomView(generator), "round " + std::to_string(round));
  EXPECT_GT(compared, 30 * 200);
}

TEST(Scene, FoldingStylesArePaintedLikeSeen) {
  auto generator = testing::seededGenerator();
  const Workbench bench{Length::mm(0.3), ToolGrid::none()};
  int compared = 0;
  for (const Style& style : styles()) {
    for (const Piece& piece : style.build(standardParameters(style), bench)) {
      for (int round = 0; round < 12; ++round) {
        // Not quite folded home, so that no two panels share a plane and the nearest is certain.
        const double progress = testing::randomIn(generator, 0.02, 0.98);
        std::vector<Angle> angles = foldAngles(piece.net, progress);
        for (Angle& angle : angles) angle = angle * testing::randomIn(generator, 0.9, 0.99);
        compared +=
            expectPaintedLikeSeen(piece.net, pose(piece.net, angles), randomView(generator),
                                  std::string(style.id) + " at " + std::to_string(progress));
      }
    }
  }
  EXPECT_GT(compared, 3000);
}

TEST(Scene, FlapGluedInsideShowsFromInsideOnly) {
  const Net net = testing::tabbedTray(60, 40, 20, 12);
  const Pose folded = pose(net, 1);
  const int tab = *net.find("tab-right");
  const int wall = *net.find("right");
  const Point3 middle = folded[tab].apply(Point{10, 6});
  for (const double turn : {-90.0, 90.0}) {
    const View view{Angle::degrees(turn), Angle::degrees(5)};
    const FoldPicture picture = drawFolded(net, folded, view, kUpwards);
    std::vector<int> order;
    for (const Facet& facet : picture.facets)
      if (testing::inRing(camera(view, kUpwards).project(middle), facet.outline) &&
          (facet.panel == tab || facet.panel == wall))
        order.push_back(facet.panel);
    const bool fromInside = dot(folded[wall].normal(), camera(view, kUpwards).towardsEye) > 0;
    // From outside the wall hides the whole tab, which is left out.
    EXPECT_EQ(order, (fromInside ? std::vector{wall, tab} : std::vector{wall})) << turn;
  }
}

TEST(Scene, PanelFoldedFlatLiesOnItsParent) {
  for (const double degrees : {180.0, -180.0}) {
    NetBuilder builder({"fold"});
    builder.root("card", rectangle(40, 30));
    builder.hinge({"card", "right"}, "turned", rectangle(30, 10), {degrees, 1});
    const Net net = builder.take();
    const View above{Angle(), Angle::degrees(80)};
    const FoldPicture picture = drawFolded(net, pose(net, 1), above, kUpwards);
    const Point seen = camera(above, kUpwards).project({35, 15, 0});
    EXPECT_EQ(paintedAt(picture, seen), degrees > 0 ? 1 : 0);
  }
}

TEST(Scene, OpeningsLookThrough) {
  NetBuilder builder({"fold"});
  Shape window = rectangle(40, 30);
  window.openings = {{{10, 10}, {10, 20}, {30, 20}, {30, 10}}, {{2, 2}, {2, 5}, {5, 5}, {5, 2}}};
  builder.root("card", window);
  const Net net = builder.take();
  const View above{Angle(), Angle::degrees(90)};
  const FoldPicture picture = drawFolded(net, pose(net, 0), above, kUpwards);
  EXPECT_EQ(paintedAt(picture, {20, 15}), kNone);
  EXPECT_EQ(paintedAt(picture, {3, 3}), kNone);
  EXPECT_EQ(paintedAt(picture, {8, 8}), 0);
  ASSERT_EQ(picture.facets.size(), 1u);
  EXPECT_NEAR(signedArea(picture.facets[0].outline), 40 * 30 - 20 * 10 - 9, 1e-6);
  EXPECT_EQ(picture.edges.size(), 12u);
}

TEST(Scene, FromAboveTheFlatNetShowsItsInsideInTrueSize) {
  const Net net = testing::plainTray(60, 40, 20).take();
  const View above{Angle(), Angle::degrees(90)};
  const FoldPicture picture = drawFolded(net, pose(net, 0), above, kUpwards);
  EXPECT_NEAR(picture.extent.width(), 60 + 2 * 20, 1e-9);
  EXPECT_NEAR(picture.extent.height(), 40 + 2 * 20, 1e-9);
  EXPECT_EQ(std::ranges::count(picture.edges, true, &VisibleEdge::crease), 4);
  EXPECT_EQ(std::ranges::count(picture.edges, false, &VisibleEdge::crease), 12);
  for (const Facet& facet : picture.facets) EXPECT_EQ(facet.face, Face::Inside);
  const View below{Angle(), Angle::degrees(-90)};
  for (const Facet& facet : drawFolded(net, pose(net, 0), below, kUpwards).facets)
    EXPECT_EQ(facet.face, Face::Outside);
}

TEST(Scene, UpperLeftFacesAreTheLightest) {
  const Net net = testing::plainTray(50, 50, 50).take();
  const FoldPicture picture =
      drawFolded(net, pose(net, 1), {Angle::degrees(-45), Angle::degrees(50)}, kUpwards, {});
  std::map<int, double> lights;
  for (const Facet& facet : picture.facets) {
    EXPECT_GE(facet.light, 0);
    EXPECT_LE(facet.light, 1);
    lights[facet.panel] = facet.light;
  }
  const auto lightOf = [&](const char* id) {
    EXPECT_TRUE(lights.contains(*net.find(id))) << id;
    return lights[*net.find(id)];
  };
  EXPECT_GT(lightOf("base"), lightOf("left"));
  EXPECT_GT(lightOf("left"), lightOf("front"));
}

TEST(Scene, SamePictureEveryTime) {
  for (const Style& style : styles()) {
    const auto pieces = style.build(standardParameters(style), {Length::mm(0.3), ToolGrid()});
    const Net& net = pieces[0].net;
    const FoldPicture one = drawFolded(net, pose(net, 0.6), standardView(), kUpwards);
    const FoldPicture two = drawFolded(net, pose(net, 0.6), standardView(), kUpwards);
    ASSERT_EQ(one.facets.size(), two.facets.size());
    for (std::size_t i = 0; i < one.facets.size(); ++i)
      EXPECT_EQ(one.facets[i].outline, two.facets[i].outline);
    ASSERT_EQ(one.edges.size(), two.edges.size());
    for (std::size_t i = 0; i < one.edges.size(); ++i)
      EXPECT_EQ(one.edges[i].line, two.edges[i].line);
  }
}

}  // namespace
}  // namespace creasewright
