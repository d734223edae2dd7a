#include "making/glue_plan.h"

#include <map>
#include <string>

#include <gtest/gtest.h>

#include "styles/registry.h"

namespace creasewright {
namespace {

std::string lastPart(const std::string& id) { return id.substr(id.rfind('/') + 1); }

/// Adhesive on all four outer strips, the four tabs and the back of the four diagonal ends; 1 mm
/// from creases and edges (common practice, no published source).
TEST(GluePlan, FramedTrayIsGluedWhereTheTradeGluesIt) {
  const Style& style = **findStyle("framed-tray");
  const Net net =
      style.build(standardParameters(style), {Length::mm(0.3), ToolGrid::none()})[0].net;
  const FlatNet flat = flatten(net);
  std::map<std::string, int> count;
  for (const GlueArea& area : planGlue(net, flat)) {
    const auto panel = static_cast<std::size_t>(area.panel);
    ++count[lastPart(net.panels[panel].id)];
    for (const Point& p : area.area) {
      EXPECT_EQ(locate(p, flat.panels[panel]), Side::Inside);
      for (const Segment& crease : flat.creases)
        EXPECT_GE(distanceToSegment(p, crease), 1 - 1e-5) << net.panels[panel].id;
    }
  }
  const std::map<std::string, int> expected{
      {"glue-strip", 4}, {"frame", 4}, {"front-tab", 2}, {"back-tab", 2}};
  EXPECT_EQ(count, expected);
}

/// A strip turned right round lies with its outside on the base; a tab folded once lies with its
/// outside on the wall's inside.
TEST(GluePlan, AdhesiveGoesOnTheFaceThatMeetsTheTarget) {
  const Style& tray = **findStyle("framed-tray");
  const Net net = tray.build(standardParameters(tray), {Length::mm(0.3), ToolGrid::none()})[0].net;
  for (const GlueArea& area : planGlue(net, flatten(net))) {
    const std::string part = lastPart(net.panels[static_cast<std::size_t>(area.panel)].id);
    EXPECT_EQ(area.flapFace, part == "frame" ? Face::Inside : Face::Outside) << part;
  }
}

TEST(GluePlan, ANarrowFlapTakesAStripAlongItsMiddle) {
  Net net;
  net.stages = {"fold"};
  net.panels = {{"base", {{0, 0}, {40, 0}, {40, 20}, {0, 20}}, {"a", "b", "c", "d"}, {}, false},
                {"flap", {{0, 0}, {40, 0}, {40, 1.5}, {0, 1.5}}, {"a", "b", "c", "d"}, {}, false}};
  net.creases = {{0, 1, {{0, 0}, {40, 0}}, Angle::degrees(180)}};
  net.mates = {{1, 0, Face::Inside, Method::Glue, true, {}}};
  const std::vector<GlueArea> plan = planGlue(net, flatten(net));
  ASSERT_EQ(plan.size(), 1u);
  EXPECT_EQ(plan[0].flapFace, Face::Inside);
  const Bounds strip = bounds(plan[0].area);
  EXPECT_NEAR((strip.low.y + strip.high.y) / 2, 0.75, 1e-3);
  EXPECT_GT(strip.width(), 38);
}

}  // namespace
}  // namespace creasewright
