#include "net/flat_net.h"

#include <gtest/gtest.h>

#include "net/net_builder.h"
#include "styles/registry.h"
#include "support/trade_tray.h"

namespace creasewright {
namespace {

/// Cornell University Library, Manual Guide 11A: a slip case for an item of 20.3 x 13.0 x 2.2 cm
/// takes a blank of 25.2 x 28.2 cm with scores 2.2 cm from top and bottom and 13.0 cm from each
/// side.
TEST(FlatNet, SlipCaseHasTheBlankOfTheLibraryManual) {
  const double cover = 130;
  const double spine = 22;
  const double tall = 208;  // 20.3 cm and 5 mm of ease
  NetBuilder net({"flaps", "covers"});
  Shape back = rectangle(spine, tall);
  back.edges = {"bottom", "right", "top", "left"};
  net.root("spine", back);
  for (const char* side : {"left", "right"}) {
    const std::string id = std::string("spine/") + side;
    net.hinge({"spine", side}, id, rectangle(tall, cover), {90, 2});
    net.hinge({id, "left"}, id + "/a", rectangle(cover, spine), {90, 1});
    net.hinge({id, "right"}, id + "/b", rectangle(cover, spine), {90, 1});
  }
  const FlatNet flat = flatten(net.take());
  EXPECT_NEAR(flat.width, 282, 1e-9);
  EXPECT_NEAR(flat.height, 252, 1e-9);
  for (const Segment& crease : flat.creases) {
    const bool upright = crease.a.x == crease.b.x;
    const double at = upright ? crease.a.x : crease.a.y;
    const double fromNearer = std::min(at, (upright ? flat.width : flat.height) - at);
    EXPECT_NEAR(fromNearer, upright ? 130 : 22, 1e-9);
  }
}

TEST(FlatNet, BlankIsTheBoundingBoxAndWasteTheRestOfIt) {
  for (const Style& style : styles()) {
    const Workbench bench{Length::mm(0.3), ToolGrid::none()};
    for (const Piece& piece : style.build(standardParameters(style), bench)) {
      const FlatNet flat = flatten(piece.net);
      ASSERT_EQ(flat.outline.size(), 1U) << style.id;
      const Bounds box = bounds(flat.outline[0].outer);
      EXPECT_NEAR(box.low.x, 0, 1e-6);
      EXPECT_NEAR(box.low.y, 0, 1e-6);
      EXPECT_NEAR(box.width(), flat.width, 1e-6);
      EXPECT_NEAR(box.height(), flat.height, 1e-6);
      double holes = 0;  // waste does not count them
      for (const auto& openings : flat.openings)
        for (const Polygon& opening : openings) holes += std::abs(signedArea(opening));
      EXPECT_NEAR(area(flat.outline) + area(flat.waste) + holes, flat.width * flat.height, 1e-3)
          << style.id;
    }
  }
}

double totalLength(const std::vector<Segment>& segments) {
  double sum = 0;
  for (const Segment& s : segments) sum += length(s);
  return sum;
}

double totalLength(const std::vector<Polyline>& lines) {
  double sum = 0;
  for (const Polyline& line : lines)
    for (std::size_t i = 1; i < line.size(); ++i) sum += distance(line[i - 1], line[i]);
  return sum;
}

/// Each crease and each parting has a panel on both sides, every other cut on one.
TEST(FlatNet, ScoresAndCutsCoverEveryPanelEdgeOnce) {
  for (const Style& style : styles()) {
    const Workbench bench{Length::mm(0.3), ToolGrid::sixteenthInch()};
    for (const Piece& piece : style.build(standardParameters(style), bench)) {
      const FlatNet flat = flatten(piece.net);
      double edges = 0;
      for (const Polygon& panel : flat.panels) edges += perimeter(panel);
      for (const auto& openings : flat.openings)
        for (const Polygon& opening : openings) edges += perimeter(opening);
      const double partings = totalLength(flat.partings);
      const double cuts = totalLength(cutLines(flat)) - totalLength(flat.slits);
      EXPECT_NEAR(edges, 2 * totalLength(flat.creases) + cuts + partings, 1e-3) << style.id;
    }
  }
}

TEST(FlatNet, TrayTabsAreCutFromTheStripsBesideThem) {
  const Style& tray = **findStyle("framed-tray");
  const Workbench bench{Length::mm(0.3), ToolGrid::sixteenthInch()};
  const FlatNet flat = flatten(tray.build(testing::tradeTray(), bench)[0].net);
  // Four tabs, each as long as half the long side less 1/16 in, but for its notch of 1/8 in; each
  // passes four strips.
  EXPECT_NEAR(totalLength(flat.partings), 4 * (5.25 / 2 - 1.0 / 16 - 1.0 / 8) * 25.4, 1e-6);
}

}  // namespace
}  // namespace creasewright
