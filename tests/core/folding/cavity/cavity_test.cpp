#include "folding/cavity/cavity.h"

#include <algorithm>
#include <limits>

#include <gtest/gtest.h>

#include "core/folding/test_nets.h"

namespace creasewright {
namespace {

constexpr double kCaliper = 0.4;

Cavity trayCavity(Point3 seed, double height) {
  Cavity cavity{"base", seed, {0, 1, 2}, {-1e4, -1e4, -1e4}, {1e4, 1e4, height}};
  return cavity;
}

TEST(Cavity, OpenTray) {
  const Net net = testing::plainTray(60, 40, 20).take();
  const CavitySize size = measureCavity(net, pose(net, 1), trayCavity({30, 20, 10}, 20), kCaliper);
  EXPECT_NEAR(size.length, 60 - kCaliper, 1e-6);
  EXPECT_NEAR(size.width, 40 - kCaliper, 1e-6);
  EXPECT_NEAR(size.height, 20 - kCaliper / 2, 1e-6);
}

TEST(Cavity, AxesNameTheSides) {
  const Net net = testing::plainTray(60, 40, 20).take();
  Cavity cavity = trayCavity({30, 20, 10}, 20);
  cavity.axes = {2, 0, 1};
  const CavitySize size = measureCavity(net, pose(net, 1), cavity, 0);
  EXPECT_NEAR(size.length, 20, 1e-6);
  EXPECT_NEAR(size.width, 60, 1e-6);
  EXPECT_NEAR(size.height, 40, 1e-6);
}

TEST(Cavity, TabsGluedInsideTakeAWholeCaliper) {
  const Net net = testing::tabbedTray(60, 40, 20, 12);
  const CavitySize size = measureCavity(net, pose(net, 1), trayCavity({30, 20, 10}, 20), kCaliper);
  // Each end wall: half a caliper of the wall, one of the tab.
  EXPECT_NEAR(size.length, 60 - 3 * kCaliper, 1e-6);
  EXPECT_NEAR(size.width, 40 - kCaliper, 1e-6);
}

TEST(Cavity, FlapThatAlreadyStandsInsideCountsWithItsOwnPlace) {
  const Net net = testing::tabbedTray(60, 40, 20, 12);
  Pose folded = pose(net, 1);
  const int tab = *net.find("tab-right");
  folded[tab] = Transform::translation({-kCaliper, 0, 0}).after(folded[tab]);
  const CavitySize size = measureCavity(net, folded, trayCavity({30, 20, 10}, 20), kCaliper);
  EXPECT_NEAR(size.length, 60 - 3 * kCaliper, 1e-6);
}

TEST(Cavity, TabsGluedOutsideTakeNothing) {
  Net net = testing::tabbedTray(60, 40, 20, 12);
  for (Mate& mate : net.mates) mate.face = Face::Outside;
  const CavitySize size = measureCavity(net, pose(net, 1), trayCavity({30, 20, 10}, 20), kCaliper);
  EXPECT_NEAR(size.length, 60 - kCaliper, 1e-6);
}

TEST(Cavity, TubeWithSeam) {
  const Net net = testing::gluedTube(40, 30, 50, 10);
  const Cavity cavity{"front", {20, 25, 15}, {0, 2, 1}, {-1e4, 0, -1e4}, {1e4, 50, 1e4}};
  const CavitySize size = measureCavity(net, pose(net, 1), cavity, kCaliper);
  EXPECT_NEAR(size.length, 40 - kCaliper, 1e-6);
  EXPECT_NEAR(size.width, 30 - 2 * kCaliper, 1e-6);
  EXPECT_NEAR(size.height, 50, 1e-6);
}

TEST(Cavity, TaperedTrayHoldsTheBoxUnderItsTop) {
  const Net net = testing::taperedTray(100, 60, 80);
  const Cavity cavity = trayCavity({50, 50, 40}, 80);
  const CavitySize thin = measureCavity(net, pose(net, 1), cavity, 0);
  EXPECT_NEAR(thin.length, 60, 1e-6);
  EXPECT_NEAR(thin.width, 60, 1e-6);
  EXPECT_NEAR(thin.height, 80, 1e-6);
  const CavitySize thick = measureCavity(net, pose(net, 1), cavity, kCaliper);
  EXPECT_NEAR(thick.length, 60 - kCaliper, 1e-6);
  EXPECT_NEAR(thick.height, 80 - kCaliper / 2, 1e-6);
}

TEST(Cavity, SeedInCardOrUnknownPanelGivesNothing) {
  const Net net = testing::plainTray(60, 40, 20).take();
  EXPECT_EQ(measureCavity(net, pose(net, 1), trayCavity({30, 20, 0.1}, 20), kCaliper).length, 0);
  Cavity lost = trayCavity({30, 20, 10}, 20);
  lost.panel = "lid";
  EXPECT_EQ(measureCavity(net, pose(net, 1), lost, kCaliper).length, 0);
}

/// Whether a triangle meets the open box: separating axes (box sides, the triangle's normal, their
/// edges' cross products), independent of the clipping in cavity.cpp.
bool meets(const std::array<Point3, 3>& triangle, Point3 low, Point3 high) {
  const std::array<Point3, 3> units{Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}};
  const std::array<Point3, 3> sides{triangle[1] - triangle[0], triangle[2] - triangle[1],
                                    triangle[0] - triangle[2]};
  std::vector<Point3> axes(units.begin(), units.end());
  axes.push_back(cross(sides[0], sides[1]));
  for (const Point3& side : sides)
    for (const Point3& axis : units) axes.push_back(cross(side, axis));
  const Point3 middle = (low + high) / 2;
  const Point3 half = (high - low) / 2;
  for (const Point3& axis : axes) {
    if (norm(axis) < 1e-12) continue;
    const double reach =
        std::abs(axis.x) * half.x + std::abs(axis.y) * half.y + std::abs(axis.z) * half.z;
    double least = std::numeric_limits<double>::infinity();
    double most = -least;
    for (const Point3& corner : triangle) {
      least = std::min(least, dot(axis, corner - middle));
      most = std::max(most, dot(axis, corner - middle));
    }
    if (least >= reach || most <= -reach) return false;
  }
  return true;
}

bool meetsAny(const std::vector<std::array<Point3, 3>>& triangles, Point3 low, Point3 high) {
  return std::any_of(triangles.begin(), triangles.end(),
                     [&](const auto& triangle) { return meets(triangle, low, high); });
}

TEST(Cavity, RandomCardIsNeverInTheBoxAndStopsEverySide) {
  auto generator = testing::seededGenerator();
  const auto in = [&](double low, double high) { return testing::randomIn(generator, low, high); };
  int grown = 0;
  for (int round = 0; round < 200; ++round) {
    Net net;
    Pose folded;
    std::vector<std::array<Point3, 3>> triangles;
    for (int i = 0; i < 8; ++i) {
      net.panels.push_back({"p" + std::to_string(i),
                            {{0, 0}, {in(10, 60), 0}, {in(5, 40), in(10, 60)}},
                            {},
                            {},
                            false});
      const Transform place = Transform::translation({in(-60, 60), in(-60, 60), in(-60, 60)})
                                  .after(Transform::rotationZ(Angle::degrees(in(0, 360))))
                                  .after(Transform::rotationX(Angle::degrees(in(0, 360))));
      folded.push_back(place);
      const Polygon& outline = net.panels.back().outline;
      triangles.push_back(
          {place.apply(outline[0]), place.apply(outline[1]), place.apply(outline[2])});
    }
    net.panels.push_back({"frame", {{900, 900}, {901, 900}, {900, 901}}, {}, {}, false});
    folded.push_back(Transform());
    const Cavity cavity{"frame", {0, 0, 0}, {0, 1, 2}, {-50, -50, -50}, {50, 50, 50}};
    const double caliper = round % 2 == 0 ? 0 : 0.5;
    const CavityBox box = cavityBox(net, folded, cavity, caliper);
    if (box.high == box.low) continue;
    ++grown;
    const Point3 reach = Point3{1, 1, 1} * (caliper / 2);
    const Point3 slack = Point3{1, 1, 1} * 1e-5;
    const Point3 low = box.low - reach;
    const Point3 high = box.high + reach;
    EXPECT_FALSE(meetsAny(triangles, low + slack, high - slack)) << "round " << round;
    const double push = 1e-3;
    for (const int side : {0, 1, 2, 3, 4, 5}) {
      const Point3 axis{side % 3 == 0 ? 1.0 : 0.0, side % 3 == 1 ? 1.0 : 0.0,
                        side % 3 == 2 ? 1.0 : 0.0};
      const bool upper = side < 3;
      const double at = dot(axis, upper ? box.high : box.low);
      if (std::abs(at) >= 50) continue;
      EXPECT_TRUE(upper ? meetsAny(triangles, low, high + axis * push)
                        : meetsAny(triangles, low - axis * push, high))
          << "round " << round << " side " << side;
    }
  }
  EXPECT_GT(grown, 100);
}

/// The largest volume over every box whose sides lie on a limit or half a caliper beside a card's
/// extent, by trying them all; cards are boxes without thickness, along the axes.
double largestByTrying(const std::vector<CavityBox>& cards, double limit, double half) {
  std::array<std::vector<double>, 3> lows;
  std::array<std::vector<double>, 3> highs;
  const std::array<Point3, 3> axes{Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}};
  for (std::size_t k = 0; k < 3; ++k) {
    lows[k] = {-limit};
    highs[k] = {limit};
    for (const CavityBox& card : cards) {
      if (const double low = dot(axes[k], card.high) + half; low <= 0) lows[k].push_back(low);
      if (const double high = dot(axes[k], card.low) - half; high >= 0) highs[k].push_back(high);
    }
  }
  double best = 0;
  const auto tryBox = [&](Point3 low, Point3 high) {
    for (const CavityBox& card : cards) {
      bool apart = false;
      for (const Point3& axis : axes)
        apart = apart || dot(axis, card.low) - half >= dot(axis, high) - 1e-9 ||
                dot(axis, card.high) + half <= dot(axis, low) + 1e-9;
      if (!apart) return;
    }
    best = std::max(best, (high.x - low.x) * (high.y - low.y) * (high.z - low.z));
  };
  for (const double x0 : lows[0])
    for (const double x1 : highs[0])
      for (const double y0 : lows[1])
        for (const double y1 : highs[1])
          for (const double z0 : lows[2])
            for (const double z1 : highs[2]) tryBox({x0, y0, z0}, {x1, y1, z1});
  return best;
}

TEST(Cavity, SquareCardLeavesTheLargestBoxThereIs) {
  auto generator = testing::seededGenerator();
  const auto in = [&](double low, double high) { return testing::randomIn(generator, low, high); };
  const std::array<Point3, 3> axes{Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}};
  int open = 0;
  for (int round = 0; round < 100; ++round) {
    Net net;
    Pose folded;
    std::vector<CavityBox> cards;
    for (std::size_t i = 0; i < 5; ++i) {
      const double w = in(10, 50);
      const double h = in(10, 50);
      net.panels.push_back({"card", {{0, 0}, {w, 0}, {w, h}, {0, h}}, {}, {}, false});
      const Point3 x = axes[(i + round) % 3];
      const Point3 y = axes[(i + round + 1) % 3];
      const Point3 corner{in(-45, 25), in(-45, 25), in(-45, 25)};
      folded.push_back(Transform::frame(corner, x, y));
      cards.push_back({corner, corner + x * w + y * h});
    }
    net.panels.push_back({"frame", {{900, 900}, {901, 900}, {900, 901}}, {}, {}, false});
    folded.push_back(Transform());
    const Cavity cavity{"frame", {0, 0, 0}, {0, 1, 2}, {-50, -50, -50}, {50, 50, 50}};
    const CavitySize size = measureCavity(net, folded, cavity, 0.6);
    const double largest = largestByTrying(cards, 50, 0.3);
    EXPECT_NEAR(size.length * size.width * size.height, largest, 1e-3) << "round " << round;
    if (largest > 0) ++open;
  }
  EXPECT_GT(open, 50);
}

TEST(Cavity, SlimProductMayNeedAnotherSpaceThanTheRoomiest) {
  // A shelf 40 mm above the base over most of the tray leaves a low, wide space or a high, slim
  // one.
  NetBuilder builder = testing::plainTray(60, 40, 50);
  Net net = builder.take();
  net.panels.push_back({"shelf", rectangle(35, 40).outline, {}, {}, false});
  Pose folded = pose(net, 1);
  folded.pop_back();
  folded.push_back(Transform::translation({0, 0, 40}));
  const Cavity cavity{"base", {45, 20, 10}, {0, 1, 2}, {-1e4, -1e4, -1e4}, {1e4, 1e4, 50}};
  EXPECT_NEAR(measureCavity(net, folded, cavity, 0).height, 40, 1e-6);
  const CavitySize slim = measureCavity(net, folded, cavity, 0, {20, 20, 48});
  EXPECT_NEAR(slim.height, 50, 1e-6);
  EXPECT_NEAR(slim.length, 25, 1e-6);
}

}  // namespace
}  // namespace creasewright
