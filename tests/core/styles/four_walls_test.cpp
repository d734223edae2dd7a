#include <algorithm>

#include <gtest/gtest.h>

#include "document/build.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

/// How far a panel reaches from the fold by which it hangs, in mm: its corners lie off the longest
/// of its edges.
double depthOf(const Panel& panel) {
  Segment longest{panel.outline.back(), panel.outline.front()};
  for (std::size_t i = 1; i < panel.outline.size(); ++i) {
    const Segment edge{panel.outline[i - 1], panel.outline[i]};
    if (length(edge) > length(longest)) longest = edge;
  }
  const Point along = unit(longest.b - longest.a);
  double depth = 0;
  for (const Point& p : panel.outline)
    depth = std::max(depth, std::abs(cross(along, p - longest.a)));
  return depth;
}

/// The tab that holds a bottom is a glue flap: max(6 mm, 10 x caliper), common practice, no
/// published source. It is so for the lowest box of the thickest card too.
TEST(FourWalls, ABottomsTabIsWideEnoughForItsGlue) {
  int judged = 0;
  for (const Style& style : styles())
    for (const double caliper : {0.2, 0.5, 0.8, 1.1})
      for (const int height : {0, 12, 16, 20, 40}) {
        Design design = *newDesign(style.id, std::nullopt, {"test", "", Length::mm(caliper), 0},
                                   Ease::Easy, ToolGrid::none());
        if (height > 0 && design.parameters.has("height"))
          design.parameters.set("height", Length::mm(height));
        const Result<BuiltDesign> built = build(design);
        if (!built.ok()) continue;
        for (const BuiltPiece& piece : built->pieces) {
          const auto tab = piece.net.find("front/bottom/tab");
          if (!tab) continue;
          ++judged;
          EXPECT_GE(depthOf(piece.net.panels[static_cast<std::size_t>(*tab)]),
                    std::max(6.0, 10 * caliper) - 1e-9)
              << style.id << ' ' << caliper << ' ' << height;
        }
      }
  EXPECT_GT(judged, 10);
}

}  // namespace
}  // namespace creasewright
