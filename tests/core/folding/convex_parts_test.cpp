#include "folding/convex_parts.h"

#include <gtest/gtest.h>

#include "net/net_builder.h"

namespace creasewright {
namespace {

Panel panelOf(const Shape& shape) {
  Panel panel;
  panel.outline = shape.outline;
  panel.openings = shape.openings;
  return panel;
}

void expectConvexAndWhole(const Panel& panel, double expectedArea) {
  double sum = 0;
  for (const Polygon& part : convexParts(panel)) {
    sum += signedArea(part);
    for (std::size_t i = 0; i < part.size(); ++i) {
      const Point b = part[(i + 1) % part.size()];
      EXPECT_GE(cross(b - part[i], part[(i + 2) % part.size()] - b), -1e-9);
    }
  }
  EXPECT_NEAR(sum, expectedArea, 1e-4);
}

TEST(ConvexParts, ConvexPanelIsItsOwnOnlyPart) {
  const Panel panel = panelOf(roundedFlap(40, 15, 6));
  const auto parts = convexParts(panel);
  ASSERT_EQ(parts.size(), 1u);
  EXPECT_EQ(parts[0], panel.outline);
}

TEST(ConvexParts, AngleTakesTwo) {
  const Panel angle = panelOf({{{0, 0}, {30, 0}, {30, 10}, {10, 10}, {10, 30}, {0, 30}}, {}});
  EXPECT_EQ(convexParts(angle).size(), 2u);
  expectConvexAndWhole(angle, 500);
}

TEST(ConvexParts, OpeningIsLeftOut) {
  Shape frame = rectangle(40, 30);
  frame.openings = {{{10, 10}, {10, 20}, {30, 20}, {30, 10}}};
  expectConvexAndWhole(panelOf(frame), 1000);
}

}  // namespace
}  // namespace creasewright
