#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "making/score_lines.h"
#include "net/whole_panels.h"

namespace creasewright::testing {
namespace {

/// Distance of two parallel lines, mm; nothing when they are not parallel or are one line.
std::optional<double> apart(const Segment& a, const Segment& b) {
  const Point along = unit(a.b - a.a);
  if (std::abs(cross(along, unit(b.b - b.a))) > 1e-6) return std::nullopt;
  const double distance = std::abs(cross(along, b.a - a.a));
  if (distance < 1e-3) return std::nullopt;
  return distance;
}

/// The scores of a piece, by the panel they fold; but not the pieces of a traced curve.
std::map<std::string, Segment> straightScores(const BuiltPiece& piece) {
  const Net& net = piece.net;
  std::map<std::string, Segment> scores;
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    const std::string& id = net.panels[static_cast<std::size_t>(crease.child)].id;
    if (isScored(crease) && wholeId(id) == id)
      scores[id + (crease.loop ? " (loop)" : "")] = piece.flat.creases[i];
  }
  return scores;
}

/// A hand cannot set a board to two scores a thickness of card apart: such relief is cut. Two
/// scores that come within 1 mm or three calipers by chance, at one size, are no such relief.
TEST(ScoreLaws, NoStyleScoresARelief) {
  Random random(907);
  for (const Style& style : styles()) {
    std::map<std::string, int> close;
    int designs = 0;
    for (int i = 0; i < 30; ++i) {
      const auto design = randomInsideLimits(random, style);
      if (!design) continue;
      const auto built = build(*design);
      ASSERT_TRUE(built.ok());
      ++designs;
      const double least = std::max(1.0, 3 * design->card.caliper.mm());
      for (const BuiltPiece& piece : built->pieces) {
        const auto scores = straightScores(piece);
        for (auto a = scores.begin(); a != scores.end(); ++a)
          for (auto b = std::next(a); b != scores.end(); ++b)
            if (const auto distance = apart(a->second, b->second); distance && *distance < least)
              ++close[a->first + " and " + b->first];
      }
    }
    EXPECT_GE(designs, 15) << style.id;
    for (const auto& [pair, times] : close)
      EXPECT_LT(times, std::max(2, designs / 5))
          << style.id << ": " << pair << " in " << times << " of " << designs;
  }
}

/// A score whose final angle is zero is folded on the way, and says to which side.
TEST(ScoreLaws, AScoreThatEndsFlatFoldsOnTheWayAsItsSenseSays) {
  Random random(908);
  int found = 0;
  for (const Style& style : styles()) {
    for (int i = 0; i < 12; ++i) {
      const auto design = randomInsideLimits(random, style);
      if (!design) continue;
      const auto built = build(*design);
      ASSERT_TRUE(built.ok());
      for (const BuiltPiece& piece : built->pieces)
        for (const Crease& crease : piece.net.creases) {
          if (!isScored(crease) || crease.angle.degrees() != 0) continue;
          ++found;
          ASSERT_FALSE(crease.way.empty()) << style.id;
          const double most = std::ranges::max(crease.way, {}, [](const Waypoint& point) {
                                return std::abs(point.angle.degrees());
                              }).angle.degrees();
          EXPECT_GE(std::abs(most), 90) << style.id;
          EXPECT_EQ(crease.isValley(), most > 0) << style.id;
        }
    }
  }
  EXPECT_GT(found, 20);
}

/// Waypoints go forward, from the flat sheet to the crease's own stage.
TEST(ScoreLaws, WaysGoForwardFromTheFlatSheet) {
  for (const Style& style : styles()) {
    Design design;
    design.styleId = style.id;
    design.parameters = standardParameters(style);
    const auto built = build(design);
    ASSERT_TRUE(built.ok());
    for (const BuiltPiece& piece : built->pieces)
      for (const Crease& crease : piece.net.creases) {
        if (crease.way.empty()) continue;
        EXPECT_EQ(crease.way.front().after, 0) << style.id;
        EXPECT_EQ(crease.way.front().angle.degrees(), 0) << style.id;
        EXPECT_TRUE(std::ranges::is_sorted(crease.way, {}, &Waypoint::after)) << style.id;
        EXPECT_LT(crease.way.back().after, crease.stage) << style.id;
      }
  }
}

}  // namespace
}  // namespace creasewright::testing
