#include "drawing/machine_lines.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "drawing/role.h"

namespace creasewright {
namespace {

/// A regular polygon about (50, 50), its corners 40 mm away.
Polygon polygonOf(int corners) {
  Polygon ring;
  for (int i = 0; i < corners; ++i) {
    const double turn = 2 * std::numbers::pi * i / corners;
    ring.push_back({50 + 40 * std::cos(turn), 50 + 40 * std::sin(turn)});
  }
  return ring;
}

const PathItem* openCut(const Drawing& drawing) {
  for (const PathItem& item : drawing.paths)
    if (item.role == Role::Cut && !item.closed) return &item;
  return nullptr;
}

// A cut from the middle of each side inwards ends where the blade goes: half a kerf outside the
// side, whichever side it is and however many corners there are.
TEST(MachineLines, AnOpenCutFollowsItsOutlineOnEverySide) {
  for (const int corners : {3, 5, 6, 7, 9}) {
    const Polygon ring = polygonOf(corners);
    for (std::size_t side = 0; side < ring.size(); ++side) {
      const Point a = ring[side];
      const Point b = ring[(side + 1) % ring.size()];
      const Point end = (a + b) / 2;
      const Point outwards = unit(end - Point{50, 50});
      Drawing drawing{100, 100, {}, {}};
      drawing.paths.push_back({.role = Role::Cut, .rings = {ring}, .closed = true});
      drawing.paths.push_back({.role = Role::Cut, .rings = {{end - outwards * 9, end}}});
      const auto made = forMachine(drawing, {ScoreForm::Line, {0.4, 0.1}});
      ASSERT_TRUE(made);
      const PathItem* cut = openCut(*made);
      ASSERT_NE(cut, nullptr);
      ASSERT_EQ(cut->rings.size(), 1U);
      EXPECT_NEAR(distance(cut->rings[0].front(), end - outwards * 9), 0, 1e-9);
      EXPECT_NEAR(distance(cut->rings[0].back(), end + outwards * 0.2), 0, 1e-6)
          << corners << " corners, side " << side;
    }
  }
}

/// The stretches of one score of so many mm, as from and to along it.
std::vector<std::pair<double, double>> stretches(Role role, double whole, ScoreForm form) {
  Drawing drawing{100, 100, {}, {}};
  drawing.paths.push_back({.role = role, .rings = {{{5, 7}, {5 + whole, 7}}}});
  const auto made = forMachine(drawing, {form, {}});
  std::vector<std::pair<double, double>> found;
  for (const PathItem& item : made->paths)
    for (const Polygon& ring : item.rings) found.emplace_back(ring[0].x - 5, ring[1].x - 5);
  return found;
}

// Dashes and gaps by turns as the role draws them, from end to end and never beyond.
TEST(MachineLines, DashesAreThoseOfTheRole) {
  for (const Role role : {Role::Valley, Role::Mountain}) {
    const auto pattern = roleStyle(role).dashes;
    double pitch = 0;
    for (const double each : pattern) pitch += each;
    for (const double whole : {3.0, 20.0, 61.3}) {
      const auto found = stretches(role, whole, ScoreForm::Dashes);
      ASSERT_FALSE(found.empty());
      double at = 0;
      std::size_t i = 0;
      for (const auto& [from, to] : found) {
        EXPECT_NEAR(from, at, 1e-9) << whole;
        EXPECT_NEAR(to, std::min(whole, at + pattern[i]), 1e-9) << whole;
        at += pattern[i] + pattern[(i + 1) % pattern.size()];
        i = (i + 2) % pattern.size();
      }
      EXPECT_GE(found.back().second, whole - pitch) << "to the end";
    }
  }
}

// Cuts all alike, a bridge at both ends and between, none narrower than half the usual one.
TEST(MachineLines, APerforationHasABridgeAtBothEnds) {
  for (const double whole : {2.0, 4.0, 10.0, 33.7}) {
    const auto found = stretches(Role::Valley, whole, ScoreForm::Perforation);
    ASSERT_FALSE(found.empty()) << whole;
    double before = 0;
    const double cut = found.front().second - found.front().first;
    for (const auto& [from, to] : found) {
      EXPECT_NEAR(to - from, cut, 1e-9) << whole;
      EXPECT_GE(from - before, std::min(kPerforationBridge, whole / 4) / 2) << whole;
      before = to;
    }
    EXPECT_LE(cut, kPerforationCut + 1e-9);
    EXPECT_GE(whole - before, std::min(kPerforationBridge, whole / 4) / 2) << whole;
  }
}

// A cut-out narrower than its kerf leaves nothing to cut; one with room shrinks, the outline grows.
TEST(MachineLines, OutlinesGrowAndCutOutsShrinkByHalfAKerf) {
  const auto square = [](double low, double high) {
    return Polygon{{low, low}, {high, low}, {high, high}, {low, high}};
  };
  Drawing drawing{100, 100, {}, {}};
  drawing.paths.push_back({.role = Role::Cut, .rings = {square(10, 90)}, .closed = true});
  drawing.paths.push_back({.role = Role::Cut, .rings = {square(40, 41)}, .closed = true});
  const auto made = forMachine(drawing, {ScoreForm::Line, {0.6, 0.4}});
  ASSERT_TRUE(made);
  ASSERT_EQ(made->paths.size(), 2U) << "cut-outs first";
  EXPECT_NEAR(bounds(made->paths[0].rings[0]).width(), 0.6, 1e-6);
  EXPECT_NEAR(bounds(made->paths[1].rings[0]).width(), 80.6, 1e-6);
  EXPECT_FALSE(forMachine(drawing, {ScoreForm::Line, {0.6, 1.1}}));
}

}  // namespace
}  // namespace creasewright
