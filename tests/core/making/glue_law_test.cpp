#include <iostream>

#include <gtest/gtest.h>

#include "core/laws/law_book.h"
#include "drawing/hatching.h"
#include "making/glue_tape.h"

// Adhesive lies on its panel and beside every opening: areas, hatching, tape and beads of glue.
namespace creasewright {
namespace {

constexpr double kPlace = 1e-4;  // mm

bool onCard(Point p, const FlatNet& flat, std::size_t panel) {
  if (locate(p, flat.panels[panel], kPlace) == Side::Outside) return false;
  return std::ranges::none_of(flat.openings[panel], [p](const Polygon& opening) {
    return locate(p, opening, kPlace) == Side::Inside;
  });
}

/// Points all along a line, its ends included.
bool onCard(const Segment& line, const FlatNet& flat, std::size_t panel) {
  for (int i = 0; i <= 50; ++i)
    if (!onCard(line.a + (line.b - line.a) * (i / 50.0), flat, panel)) return false;
  return true;
}

struct GlueTally {
  int areas = 0;
  int beads = 0;
};

void judgeGlue(const Net& net, const FlatNet& flat, ToolGrid grid, GlueTally& tally) {
  const std::vector<GlueArea> plan = planGlue(net, flat);
  for (const GlueArea& area : plan) {
    const auto panel = static_cast<std::size_t>(area.panel);
    for (std::size_t i = 0; i < area.area.size(); ++i)
      EXPECT_TRUE(onCard({area.area[i], area.area[(i + 1) % area.area.size()]}, flat, panel));
    for (const Segment& line : hatch({area.area}, 2, 45)) EXPECT_TRUE(onCard(line, flat, panel));
    ++tally.areas;
  }
  const AdhesivePlan adhesive = planAdhesive(net, plan, planFolds(net, flat), grid);
  EXPECT_EQ(adhesive.strips.size(), plan.size());
  for (const GlueStrip& strip : adhesive.strips) {
    const GlueArea& area = plan[static_cast<std::size_t>(strip.area)];
    const auto panel = static_cast<std::size_t>(area.panel);
    const Point half =
        turnLeft(unit(strip.middle.b - strip.middle.a)) * (strip.width.mm() / 2 - 0.03);
    const Point aside = strip.liquid() ? Point{} : half;
    for (const Point by : {aside, Point{}, Point{} - aside})
      EXPECT_TRUE(onCard({strip.middle.a + by, strip.middle.b + by}, flat, panel));
    if (strip.liquid()) ++tally.beads;
  }
}

/// The net with a square hole in the middle of every glued panel.
Net punched(Net net) {
  for (const Mate& mate : net.mates) {
    Panel& panel = net.panels[static_cast<std::size_t>(mate.panel)];
    if (mate.method != Method::Glue || !panel.openings.empty()) continue;
    const Bounds box = bounds(panel.outline);
    const Point middle = (box.low + box.high) / 2;
    const double half = std::min(box.width(), box.height()) / 8;
    const Polygon hole{middle + Point{-half, -half}, middle + Point{-half, half},
                       middle + Point{half, half}, middle + Point{half, -half}};
    if (std::ranges::all_of(hole,
                            [&](Point p) { return locate(p, panel.outline) == Side::Inside; }))
      panel.openings.push_back(hole);
  }
  return net;
}

TEST(GlueLaw, EveryLineLiesOnItsPanelAndSparesOpenings) {
  testing::Random random(1804);
  GlueTally tally;
  for (const Style& style : styles())
    for (int round = 0; round < 12; ++round) {
      const auto design = testing::randomInsideLimits(random, style);
      if (!design) continue;
      const auto built = build(*design);
      ASSERT_TRUE(built);
      SCOPED_TRACE(testing::describe(*built));
      for (const BuiltPiece& piece : built->pieces) {
        judgeGlue(piece.net, piece.flat, design->grid, tally);
        const Net holed = punched(piece.net);
        judgeGlue(holed, flatten(holed), design->grid, tally);
      }
      if (HasFailure()) return;
    }
  std::cout << tally.areas << " areas, " << tally.beads << " beads\n";
  EXPECT_GT(tally.areas, 500);
}

}  // namespace
}  // namespace creasewright
