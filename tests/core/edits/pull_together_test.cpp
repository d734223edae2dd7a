#include "edits/pull_together.h"

#include <cmath>
#include <iostream>

#include <gtest/gtest.h>

#include "edits/pull.h"
#include "fit/card.h"
#include "styles/registry.h"
#include "support/handles.h"
#include "support/random.h"

namespace creasewright {
namespace {

using testing::along;
using testing::cornersOf;
using testing::edgeOf;
using testing::lengthOf;

Design trayOn(ToolGrid grid) {
  return *newDesign("framed-tray", *parseProduct("box:105x32x22mm"), *findCard("300gsm"),
                    Ease::Easy, grid);
}

double changeOf(const Design& design, const PulledTogether& pulled, std::string_view key) {
  for (const auto& [each, value] : pulled.values)
    if (each == key) return value.mm() - design.parameters.mm(key);
  ADD_FAILURE() << "took no part: " << key;
  return 0;
}

Design after(const Design& design, const PulledTogether& pulled) {
  Design changed = design;
  for (const auto& [key, value] : pulled.values) changed.parameters.set(key, value);
  return changed;
}

std::vector<std::string_view> keysOf(const std::vector<PullWay>& ways) {
  std::vector<std::string_view> keys;
  for (const PullWay& way : ways) keys.push_back(way.key);
  return keys;
}

// Worked by hand: of all changes that move the line by d + w / 2 = 5 mm, the shortest (d, w) lies
// along (1, 1/2): d = 4, w = 2.
TEST(PullTogether, TheLeastChangeOfTwoMeasuresIsTaken) {
  const Design design = trayOn(ToolGrid::none());
  const Handle fold = edgeOf(design, "base/front/wall", {0, -1});
  const PulledTogether pulled = pullTogether(design, {{fold, 5}}, {"depth", "opening-width"}, true);
  EXPECT_NEAR(changeOf(design, pulled, "depth"), 4, 1e-3);
  EXPECT_NEAR(changeOf(design, pulled, "opening-width"), 2, 1e-3);
  EXPECT_FALSE(pulled.stopped);
  ASSERT_EQ(pulled.gone.size(), 1U);
  EXPECT_NEAR(pulled.gone.front(), 5, 1e-3);
}

TEST(PullTogether, WhereALimitStopsOneMeasureTheOthersGoOn) {
  const Design design = trayOn(ToolGrid::none());
  const Handle fold = edgeOf(design, "base/front/wall", {0, -1});
  const PullWay depth = waysToPull(design, fold).front();
  ASSERT_EQ(depth.key, "depth");
  const double least = -pull(design, fold, depth, -500, true).gone;
  const double far = least + 2;  // farther in than the depth alone can bring it
  const PulledTogether pulled =
      pullTogether(design, {{fold, -far}}, {"depth", "opening-width"}, true);
  EXPECT_NEAR(pulled.gone.front(), -far, 1e-3);
  EXPECT_FALSE(pulled.stopped) << "the opening's width makes up for it";
  EXPECT_TRUE(limitProblems(after(design, pulled)).empty());

  const PulledTogether beyond =
      pullTogether(design, {{fold, -500}}, {"depth", "opening-width"}, true);
  ASSERT_TRUE(beyond.stopped);
  EXPECT_EQ(beyond.stopped->code, ProblemCode::ParameterTooSmall);
  EXPECT_LT(beyond.gone.front(), -far);
  EXPECT_TRUE(limitProblems(after(design, beyond)).empty());
}

TEST(PullTogether, OnTheGridEveryMeasureLiesOnAMark) {
  const Design design = trayOn(ToolGrid::millimetre());
  const Handle fold = edgeOf(design, "base/front/wall", {0, -1});
  const auto ways = waysToPull(design, fold);
  const PulledTogether pulled = pullTogether(design, {{fold, 6.3}}, keysOf(ways), false);
  int changed = 0;
  for (const auto& [key, value] : pulled.values) {
    if (value == design.parameters.length(key)) continue;
    EXPECT_TRUE(design.grid.holds(value)) << key << ' ' << value.mm();
    ++changed;
  }
  EXPECT_GE(changed, 2);
  EXPECT_NEAR(pulled.gone.front(), 6.3, 0.5) << "no farther than the half of a mark";
}

TEST(PullTogether, WhatIsNotThereIsNotPulled) {
  const Design design = trayOn(ToolGrid::none());
  const Handle none{0, "no-such-panel", 0, 4};
  EXPECT_EQ(after(design, pullTogether(design, {{none, 5}}, {"depth"}, true)), design);
  EXPECT_EQ(after(design, pullTogether(design, {}, {"depth"}, true)), design);
  const Handle fold = edgeOf(design, "base/front/wall", {0, -1});
  EXPECT_EQ(after(design, pullTogether(design, {{fold, 5}}, {}, true)), design);
}

/// A corner of a panel: the two lines that meet there; fewer where one cannot be taken.
std::vector<Aim> cornerAims(const Design& design, const BuiltDesign& built,
                            testing::Random& random) {
  const Net& net = built.pieces.front().net;
  const Panel& panel = net.panels[static_cast<std::size_t>(
      random.whole(0, static_cast<int>(net.panels.size()) - 1))];
  const auto corners = static_cast<int>(panel.outline.size());
  const int edge = random.whole(0, corners - 1);
  std::vector<Aim> aims;
  for (const int each : {edge, (edge + 1) % corners}) {
    const Handle line{0, panel.id, each, corners};
    if (!placeOfHandle(design, line) || lengthOf(built, line) < 3) continue;
    if (!waysToPull(design, line).empty()) aims.push_back({line, random.between(-4, 4)});
  }
  return aims;
}

double missOf(const std::vector<Aim>& aims, const std::vector<double>& gone) {
  double sum = 0;
  for (std::size_t i = 0; i < aims.size(); ++i) sum = std::hypot(sum, aims[i].byMm - gone[i]);
  return sum;
}

/// How far the lines have gone between two built designs; nothing where their panel has other
/// corners.
std::optional<std::vector<double>> goneBetween(const Design& design, const BuiltDesign& before,
                                               const Design& changed,
                                               const std::vector<Aim>& aims) {
  const auto built = build(changed);
  if (!built || !limitProblems(changed).empty()) return std::nullopt;
  std::vector<double> gone;
  for (const Aim& aim : aims) {
    const auto& line = std::get<Handle>(aim.thing);
    if (cornersOf(*built, line) != line.corners) return std::nullopt;
    const Point normal = placeOfHandle(design, line)->normal;
    gone.push_back(along(*built, line, normal) - along(before, line, normal));
  }
  return gone;
}

/// The least miss of all pairs of values of two measures within 6 mm, a millimetre apart; `alone`:
/// of those that change only one of them.
double leastOfAll(const Design& design, const BuiltDesign& before, const std::vector<Aim>& aims,
                  const std::vector<std::string_view>& keys, bool alone) {
  double least = missOf(aims, std::vector<double>(aims.size(), 0));
  for (double first = -6; first <= 6; first += 1) {
    for (double second = -6; second <= 6; second += 1) {
      if (alone && first != 0 && second != 0) continue;
      Design other = design;
      other.parameters.set(keys[0], design.parameters.length(keys[0]) + Length::mm(first));
      other.parameters.set(keys[1], design.parameters.length(keys[1]) + Length::mm(second));
      const auto gone = goneBetween(design, before, other, aims);
      if (gone) least = std::min(least, missOf(aims, *gone));
    }
  }
  return least;
}

// Law: in every style, two measures bring a corner as near to where it is pulled as the best of all
// pairs of values (plain enumeration), and it lies there once the design is built. Where limits
// stop them, which may hang together in any way: as near as the best of each measure alone.
TEST(PullTogether, NoPairOfValuesBringsACornerNearer) {
  testing::Random random(4711);
  int cornersPulled = 0;
  int free = 0;
  int there = 0;
  for (const Style& style : styles()) {
    const Design design = *newDesign(style.id, *parseProduct("box:60x42x35mm"), *findCard("300gsm"),
                                     Ease::Easy, ToolGrid::none());
    if (!limitProblems(design).empty()) continue;
    const BuiltDesign before = *build(design);
    for (int tries = 0, done = 0; tries < 20 && done < 2; ++tries) {
      const std::vector<Aim> aims = cornerAims(design, before, random);
      if (aims.size() != 2) continue;
      std::vector<std::string_view> keys = keysOf(waysToPull(design, aims[0].thing));
      for (const std::string_view key : keysOf(waysToPull(design, aims[1].thing)))
        if (std::ranges::find(keys, key) == keys.end()) keys.push_back(key);
      if (keys.size() < 2) continue;
      std::swap(keys[1],
                keys[static_cast<std::size_t>(random.whole(1, static_cast<int>(keys.size()) - 1))]);
      keys.resize(2);
      const PulledTogether pulled = pullTogether(design, aims, keys, true);
      const auto gone = goneBetween(design, before, after(design, pulled), aims);
      ASSERT_TRUE(limitProblems(after(design, pulled)).empty()) << style.id << ": past a limit";
      if (!gone) continue;
      const double miss = missOf(aims, *gone);
      EXPECT_NEAR(miss, missOf(aims, pulled.gone), 1e-6) << style.id;
      const std::string where = std::string(style.id) + ' ' +
                                std::get<Handle>(aims[0].thing).panel + ' ' + std::string(keys[0]) +
                                ' ' + std::string(keys[1]);
      const bool stopped = pulled.stopped.has_value();
      EXPECT_LE(miss, leastOfAll(design, before, aims, keys, stopped) + 0.02) << where;
      free += stopped ? 0 : 1;
      there += miss < 0.01 ? 1 : 0;
      ++cornersPulled;
      ++done;
    }
  }
  std::cout << there << " of " << cornersPulled << " corners came where they were pulled, "
            << cornersPulled - free << " were stopped by a limit\n";
  EXPECT_GT(cornersPulled, 40);
  EXPECT_GT(free, 30);
  EXPECT_GT(there, 20);
}

}  // namespace
}  // namespace creasewright
