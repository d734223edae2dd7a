#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "net/flat_net.h"
#include "net/pose.h"
#include "styles/registry.h"
#include "support/trade_tray.h"

// Measures of a framed tray and its belly band as makers give them: common practice, no published
// source. Inches throughout.
namespace creasewright {
namespace {

const Workbench kHand{Length::mm(0.3), ToolGrid::sixteenthInch()};

FlatNet flatOf(const char* id, const Parameters& parameters) {
  const Style& style = **findStyle(id);
  EXPECT_TRUE(checkLimits(style, parameters, kHand).empty());
  return flatten(style.build(parameters, kHand)[0].net);
}

/// Distinct distances of the upright (or level) creases from the left (or lower) side, in inches.
std::vector<double> creasesAt(const FlatNet& flat, bool upright) {
  std::vector<double> at;
  for (const Segment& c : flat.creases) {
    if (std::abs(upright ? c.a.x - c.b.x : c.a.y - c.b.y) > 1e-9) continue;
    const double inches = (upright ? c.a.x : c.a.y) / 25.4;
    if (std::ranges::none_of(at, [inches](double a) { return std::abs(a - inches) < 1e-9; }))
      at.push_back(inches);
  }
  std::ranges::sort(at);
  return at;
}

void expectAt(const std::vector<double>& have, const std::vector<double>& want) {
  ASSERT_EQ(have.size(), want.size());
  for (std::size_t i = 0; i < want.size(); ++i) EXPECT_NEAR(have[i], want[i], 1e-9);
}

TEST(TradeValues, FramedTrayNeedsTheSheetMakersCut) {
  const FlatNet flat = flatOf("framed-tray", testing::tradeTray());
  EXPECT_NEAR(flat.width / 25.4, 10.75, 1e-9);
  EXPECT_NEAR(flat.height / 25.4, 7.75, 1e-9);
  expectAt(creasesAt(flat, true), {0.375, 1.375, 1.75, 2.75, 8, 9, 9.375, 10.375});
  expectAt(creasesAt(flat, false), {0.375, 1.375, 1.75, 2.75, 5, 6, 6.375, 7.375});
}

TEST(TradeValues, FramedTrayTabsStandHalfAnInchUpTheWall) {
  const Net net = (*findStyle("framed-tray"))->build(testing::tradeTray(), kHand)[0].net;
  const FlatNet flat = flatten(net);
  const Bounds tab =
      bounds(flat.panels[static_cast<std::size_t>(*net.find("base/left/front-tab"))]);
  EXPECT_NEAR(tab.low.x / 25.4, 2.25, 1e-9);
  EXPECT_NEAR(tab.high.x / 25.4, 2.75, 1e-9);
  EXPECT_NEAR(tab.high.y / 25.4, 2.75, 1e-9);
  EXPECT_LT(tab.height() / 25.4, 5.25 / 2);  // two tabs share one tube
  EXPECT_GE(tab.low.y, 0);
}

TEST(TradeValues, BellyBandSlidesOverTheTray) {
  Parameters p;
  p.set("around-length", Length::inches(21, 4));
  p.set("around-width", Length::inches(9, 4));
  p.set("around-depth", Length::inches(1));
  p.set("ease-width", Length::inches(1, 16));
  p.set("ease-length", Length::inches(1, 16));
  p.set("overlap", Length::inches(3, 8));
  p.set("wide-part", Length::inches(3, 2));
  const FlatNet flat = flatOf("belly-band", p);
  EXPECT_NEAR(flat.width / 25.4, 7, 1e-9);
  EXPECT_NEAR(flat.height / 25.4, 5 + 5.0 / 16, 1e-9);
  // The last line divides the lap in the model and is not scored.
  expectAt(creasesAt(flat, true), {1.5, 2.5, 4 + 13.0 / 16, 5 + 13.0 / 16, 7 - 0.375});
}

TEST(TradeValues, TuckLidIsTwoCalipersNarrowerThanItsOpening) {
  // Tuck panel relief 2 t, seam panel narrower by the card it laps: common practice, no published
  // source. On a tool grid the back is as long as the front: no hand tool scores a caliper's
  // difference.
  const Style& style = **findStyle("straight-tuck-box");
  const Parameters p = standardParameters(style);
  const Net net = style.build(p, {kHand.caliper, ToolGrid::none()})[0].net;
  const Net hand = style.build(p, kHand)[0].net;
  const Polygon& back =
      hand.panels[static_cast<std::size_t>(*hand.find("front/left/back"))].outline;
  EXPECT_NEAR(bounds(back).height(), 60, 1e-9);
  const auto width = [&net](const char* id) {
    return bounds(net.panels[static_cast<std::size_t>(*net.find(id))].outline);
  };
  EXPECT_NEAR(width("front/left/back/top-lid").width(), 60 - 2 * 0.3, 1e-9);
  EXPECT_NEAR(width("front/left/back").height(), 60 - 0.3, 1e-9);
  EXPECT_LE(2 * width("front/left/top-dust-flap").height(), 60);
}

/// The relief of a lid is the same on both sides of its opening, also where the back that carries
/// it is narrower for the seam.
TEST(TradeValues, LidReliefIsCentred) {
  const std::vector<std::pair<const char*, std::vector<const char*>>> lids{
      {"straight-tuck-box", {"front/left/back/top-lid", "front/left/back/bottom-lid"}},
      {"reverse-tuck-box", {"front/left/back/top-lid", "front/bottom-lid"}},
      {"snap-lock-bottom-box", {"front/left/back/top-lid"}},
      {"crash-lock-bottom-box", {"front/left/back/top-lid", "front/left/back/bottom"}},
      {"hinged-lid-box", {"base/back/lid/tuck", "base/back/lid"}}};
  for (const auto& [id, panels] : lids) {
    const Style& style = **findStyle(id);
    const Net net = style.build(standardParameters(style), kHand)[0].net;
    const Pose folded = pose(net, 1);
    const Bounds opening = bounds(net.panels[0].outline);
    for (const char* panel : panels) {
      ASSERT_TRUE(net.find(panel)) << id << ' ' << panel;
      const auto i = static_cast<std::size_t>(*net.find(panel));
      double low = 1e9;
      double high = -1e9;
      for (const Point& p : net.panels[i].outline) {
        low = std::min(low, folded[i].apply(p).x);
        high = std::max(high, folded[i].apply(p).x);
      }
      EXPECT_NEAR(low - opening.low.x, opening.high.x - high, 1e-9) << id << ' ' << panel;
    }
  }
}

}  // namespace
}  // namespace creasewright
