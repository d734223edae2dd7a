#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "document/build.h"
#include "styles/registry.h"
#include "support/random.h"

namespace creasewright {
namespace {

/// The nearest that the middle plane of a panel comes to a line through `foot` along z of the
/// cavity's panel, between the heights of the product: corners and points between them are tried.
double clearance(const BuiltPiece& piece, const RoundRoom& room) {
  const Net& net = piece.net;
  const Transform toFrame =
      piece.folded[static_cast<std::size_t>(*net.find(piece.cavity->panel))].inverse();
  double nearest = 1e9;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Polygon& outline = net.panels[i].outline;
    const Transform place = toFrame.after(piece.folded[i]);
    constexpr int kSteps = 60;
    for (std::size_t k = 0; k < outline.size(); ++k)
      for (int step = 0; step <= kSteps; ++step) {
        const Point edge = outline[k] + (outline[(k + 1) % outline.size()] - outline[k]) *
                                            (static_cast<double>(step) / kSteps);
        for (int in = 0; in <= kSteps; ++in) {
          const Point p = edge + (outline[0] - edge) * (static_cast<double>(in) / kSteps);
          const Point3 at = place.apply(p);
          if (at.z < room.foot.z + 0.5 || at.z > room.foot.z + room.size.height - 0.5) continue;
          nearest = std::min(nearest, std::hypot(at.x - room.foot.x, at.y - room.foot.y));
        }
      }
  }
  return nearest;
}

/// A candle 50 mm across needs 53 mm with its ease, in a box whose flats are hardly farther apart.
/// Judged by points of the folded walls, tried one by one.
TEST(RoundProduct, StandsBetweenTheFlats) {
  testing::Random random(331);
  for (const char* id : {"prism-box-with-lid", "petal-prism-box", "tapered-cup"}) {
    for (int i = 0; i < 12; ++i) {
      const Length across = Length::mm(random.between(30, 120));
      const Product product{ProductShape::Cylinder, across, across,
                            Length::mm(random.between(25, 120))};
      const Card card{"test", "test card", Length::mm(random.between(0.2, 0.5)), 0};
      const Design design =
          newDesign(id, product, card, Ease::Easy, ToolGrid::millimetre()).value();
      const auto built = build(design);
      ASSERT_TRUE(built.ok()) << id;
      EXPECT_TRUE(built->problems.empty()) << id << ' ' << productText(product);
      const BuiltPiece& piece = built->pieces.front();
      ASSERT_TRUE(piece.roundRoom.has_value()) << id;
      const double radius = across.mm() / 2 + 1.5;  // 3 mm of ease in all
      EXPECT_NEAR(piece.roundRoom->size.across, 2 * radius, 1e-6);
      EXPECT_GE(clearance(piece, *piece.roundRoom), radius + card.caliper.mm() / 2 - 0.01) << id;
    }
  }
}

/// A cup for something wider than high: its foot stands on the base's tabs, not where half of it is
/// below the middle. The first is 25.3 mm across and 23.9 mm high.
TEST(RoundProduct, ASquatOneStandsOnTheBase) {
  testing::Random random(332);
  for (const char* id : {"prism-box-with-lid", "petal-prism-box", "tapered-cup"})
    for (int i = 0; i < 60; ++i) {
      const Length across = i == 0 ? Length::mm(25.3) : Length::mm(random.between(22, 90));
      const Product product{ProductShape::Cylinder, across, across,
                            i == 0 ? Length::mm(23.9) : Length::mm(0.95 * across.mm())};
      const Card card{"test", "test card",
                      i == 0 ? Length::mm(0.3) : Length::mm(random.between(0.2, 0.5)), 0};
      const Ease ease = i == 0 ? Ease::Loose : static_cast<Ease>(random.whole(0, 2));
      const auto built = build(newDesign(id, product, card, ease, ToolGrid::none()).value());
      ASSERT_TRUE(built.ok()) << id;
      EXPECT_TRUE(built->problems.empty()) << id << ' ' << productText(product);
    }
}

/// A box too narrow for the round product is still said to be.
TEST(RoundProduct, ATooNarrowPrismIsSaid) {
  Design design = newDesign("prism-box-with-lid", *parseProduct("cylinder:50x60mm"), cards()[0],
                            Ease::Easy, ToolGrid::none())
                      .value();
  design.parameters.set("across", design.parameters.length("across") - Length::mm(0.8));
  const auto built = build(design);
  ASSERT_TRUE(built.ok());
  EXPECT_FALSE(built->problems.empty());
  EXPECT_FALSE(built->pieces.front().roundRoom.has_value());
}

TEST(RoundProduct, EveryFittedStyleHoldsIt) {
  testing::Random random(332);
  for (const Style& style : styles())
    for (int i = 0; i < 60; ++i) {
      const Length across = Length::mm(random.between(8, 150));
      const bool ball = random.whole(0, 1) == 0;
      const Product product{ball ? ProductShape::Sphere : ProductShape::Cylinder, across, across,
                            ball ? across : Length::mm(random.between(5, 150))};
      const Card card{"test", "test card", Length::mm(random.between(0.15, 0.6)), 0};
      const Design design = newDesign(style.id, product, card, static_cast<Ease>(i % 3),
                                      i % 2 == 0 ? ToolGrid::none() : ToolGrid::sixteenthInch())
                                .value();
      const auto built = build(design);
      ASSERT_TRUE(built.ok()) << style.id << ' ' << productText(product);
      EXPECT_TRUE(onlyWarnings(built->problems))
          << style.id << ' ' << productText(product) << " t " << card.caliper.mm() << ' '
          << codeName(built->problems.front().code);
    }
}

}  // namespace
}  // namespace creasewright
