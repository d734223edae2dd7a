#include "making/score_plan.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/making/score_plan_text.h"
#include "styles/registry.h"
#include "support/random.h"
#include "support/trade_tray.h"

namespace creasewright {
namespace {

std::string planOf(const char* id, const Parameters& parameters, ToolGrid grid) {
  const Net net = (*findStyle(id))->build(parameters, {Length::mm(0.3), grid})[0].net;
  return testing::planText(planScores(net, flatten(net), grid));
}

// Trade check values: common practice, no published source. Sixteenths of an inch.
TEST(ScorePlan, FramedTrayIsGroupedAsTheTradeGroupsIt) {
  EXPECT_EQ(planOf("framed-tray", testing::tradeTray(), ToolGrid::sixteenthInch()),
            "left right bottom top: 6 22 28 44\n"
            "left right: 50 from bottom to 22 line 2 cut, 74 from bottom to 22 line 2 cut\n"
            "bottom top: 36 from left to 44 line 4 cut, 136 from left to 44 line 4 cut\n");
}

TEST(ScorePlan, BellyBandIsScoredFromOneSide) {
  EXPECT_EQ(planOf("belly-band", standardParameters(**findStyle("belly-band")),
                   ToolGrid::sixteenthInch()),
            "left: 24 40 77 93\n");
}

/// A mark of the cut plan or a score, in blank coordinates.
std::vector<Segment> scoresOf(const ScorePlan& plan, const FlatNet& flat, bool fullOnly) {
  std::vector<Segment> lines;
  for (const ScoreSetup& setup : plan.setups)
    for (const ScoreSide& side : testing::placed(setup, flat))
      if (side.reading.purpose == ScorePurpose::Fold &&
          (!fullOnly || side.reading.run == ScoreRun::Full))
        lines.push_back(side.line);
  if (!fullOnly)
    for (const FreeScore& score : plan.freeScores) lines.push_back(score.line);
  return lines;
}

/// Random parameters inside the limits, or the standard ones where a key cannot move.
Parameters randomParameters(testing::Random& random, const Style& style, const Workbench& bench) {
  Parameters parameters = standardParameters(style);
  for (const ParameterSpec& spec : style.parameters) {
    if (spec.kind != ParameterKind::Length) continue;
    Parameters tried = parameters;
    tried.set(spec.key, Length::mm(parameters.mm(spec.key) * random.between(0.6, 1.8)));
    if (checkLimits(style, tried, bench).empty()) parameters = tried;
  }
  return parameters;
}

void expectCoveredOnce(const Net& net, const FlatNet& flat, const ScorePlan& plan,
                       const std::string& name) {
  const std::vector<Segment> scores = scoresOf(plan, flat, false);
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Segment& crease = flat.creases[i];
    for (const double share : {0.01, 0.37, 0.5, 0.99}) {
      const Point p = crease.a + (crease.b - crease.a) * share;
      const auto covering = std::ranges::count_if(scores, [&](const Segment& s) {
        return distanceToSegment(p, s) < 1e-3 &&
               std::abs(cross(unit(s.b - s.a), unit(crease.b - crease.a))) < 1e-6;
      });
      EXPECT_EQ(covering, net.creases[i].kind == CreaseKind::Flat ? 0 : 1)
          << name << " crease to " << net.panels[net.creases[i].child].id;
    }
  }
}

/// Points along every full score lie inside no panel but flaps that are glued out of sight.
void expectClear(const Net& net, const FlatNet& flat, const ScorePlan& plan,
                 const std::string& name) {
  for (const Segment& line : scoresOf(plan, flat, true))
    for (int k = 0; k < 200; ++k) {
      const Point p = line.a + (line.b - line.a) * ((k + 0.5) / 200);
      for (std::size_t i = 0; i < flat.panels.size(); ++i) {
        const bool hidden = std::ranges::any_of(net.mates, [&](const Mate& mate) {
          return mate.panel == static_cast<int>(i) && mate.method == Method::Glue;
        });
        if (hidden && !net.panels[i].shows) continue;
        EXPECT_NE(locate(p, flat.panels[i], 0.05), Side::Inside) << name << net.panels[i].id;
      }
    }
}

TEST(ScorePlan, EveryCreaseHasOneScoreAndNoFullScoreCrossesAPanel) {
  testing::Random random(7);
  int seen = 0;
  for (const Style& style : styles())
    for (int round = 0; round < 40; ++round) {
      const Workbench bench{Length::mm(random.between(0.15, 0.6)),
                            round % 2 == 0 ? ToolGrid::sixteenthInch() : ToolGrid::none()};
      for (const Piece& piece : style.build(randomParameters(random, style, bench), bench)) {
        const FlatNet flat = flatten(piece.net);
        const ScorePlan plan = planScores(piece.net, flat, bench.grid);
        expectCoveredOnce(piece.net, flat, plan, piece.name);
        expectClear(piece.net, flat, plan, piece.name);
        ++seen;
      }
    }
  EXPECT_GE(seen, 120);
}

/// A box on the grid in a card whose caliper is not: every full score has a side from which it
/// reads on the grid, and that side is chosen.
TEST(ScorePlan, TuckBoxReadsOnTheGridWhereASideAllowsIt) {
  const ToolGrid grid = ToolGrid::sixteenthInch();
  const Style& style = **findStyle("straight-tuck-box");
  Parameters parameters = standardParameters(style);
  parameters.set("length", Length::inches(5, 2));
  parameters.set("width", Length::inches(3, 2));
  parameters.set("height", Length::inches(5));
  const Net net = style.build(parameters, {Length::mm(0.3), grid})[0].net;
  const ScorePlan plan = planScores(net, flatten(net), grid);
  EXPECT_TRUE(plan.freeScores.empty());
  int readings = 0;
  for (const ScoreSetup& setup : plan.setups)
    for (const ScoreReading& reading : setup.readings) {
      EXPECT_TRUE(grid.holds(reading.at)) << reading.at.inches();
      ++readings;
    }
  EXPECT_GE(readings, 5);
}

}  // namespace
}  // namespace creasewright
