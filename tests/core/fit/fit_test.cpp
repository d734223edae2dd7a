#include "fit/fit.h"

#include <gtest/gtest.h>

#include "styles/registry.h"
#include "support/random.h"

namespace creasewright {
namespace {

const ToolGrid kGrids[] = {ToolGrid::none(), ToolGrid::eighthInch(), ToolGrid::sixteenthInch(),
                           ToolGrid::millimetre()};

Product randomBox(testing::Random& random) {
  return {ProductShape::Box, Length::mm(random.between(5, 250)), Length::mm(random.between(5, 200)),
          Length::mm(random.between(1, 200))};
}

TEST(Fit, ChosenIsOnTheGridAndNeverLessThanNeeded) {
  testing::Random random(41);
  for (const Style& style : styles()) {
    for (int i = 0; i < 300; ++i) {
      const ToolGrid grid = kGrids[random.whole(0, 3)];
      const Making making{Length::mm(random.between(0.15, 0.6)), grid};
      const Fitted fitted =
          fit(style, randomBox(random), static_cast<Ease>(random.whole(0, 2)), making);
      for (const FitReason& reason : fitted.reasons) {
        EXPECT_GE(reason.eased, reason.product);
        EXPECT_GE(reason.chosen, reason.needed) << style.id << ' ' << reason.key;
        EXPECT_TRUE(grid.holds(reason.chosen, {})) << style.id << ' ' << reason.key;
        EXPECT_EQ(reason.chosen, fitted.parameters.length(reason.key));
      }
      EXPECT_TRUE(checkLimits(style, fitted.parameters, making).empty()) << style.id;
    }
  }
}

TEST(Fit, LargerProductNeverShrinksAMeasure) {
  testing::Random random(42);
  for (const Style& style : styles()) {
    for (int i = 0; i < 100; ++i) {
      const Making making{Length::mm(0.3), kGrids[random.whole(0, 3)]};
      const Product small = randomBox(random);
      Product large = small;
      large.width += Length::mm(random.between(0, 20));
      const Fitted a = fit(style, small, Ease::Easy, making);
      const Fitted b = fit(style, large, Ease::Easy, making);
      for (std::size_t k = 0; k < a.reasons.size(); ++k)
        EXPECT_LE(a.reasons[k].chosen, b.reasons[k].chosen) << style.id;
    }
  }
}

TEST(Fit, TrayLaysATubeDownAndKeepsABoxAsGiven) {
  const Style& tray = **findStyle("framed-tray");
  const Product tube{ProductShape::Tube, Length::mm(35), Length::mm(20), Length::mm(110)};
  EXPECT_EQ(roomFor(tube, tray, Ease::Easy).product[0], Length::mm(110));
  EXPECT_EQ(roomFor(tube, tray, Ease::Easy).product[2], Length::mm(20));
  const Product box{ProductShape::Box, Length::mm(35), Length::mm(20), Length::mm(110)};
  EXPECT_EQ(roomFor(box, tray, Ease::Easy).product[2], Length::mm(110));
}

TEST(Fit, BandGetsNoEaseOnItsDepth) {
  // Common practice, no published source: a sliding band has ease on the width only, and the card's
  // thickness on the depth.
  const Style& band = **findStyle("belly-band");
  const Product box{ProductShape::Box, Length::inches(21, 4), Length::inches(9, 4),
                    Length::inches(1)};
  const Fitted fitted = fit(band, box, Ease::Easy, {Length::mm(0.25), ToolGrid::none()});
  EXPECT_EQ(fitted.parameters.length("around-width"), Length::inches(9, 4));
  EXPECT_EQ(fitted.parameters.length("around-depth"), Length::inches(1) + Length::mm(0.5));
}

TEST(Fit, EaseWords) {
  EXPECT_EQ(*parseEase("snug"), Ease::Snug);
  EXPECT_EQ(easeText(Ease::Loose), "loose");
  EXPECT_EQ(parseEase("tight").problem().code, ProblemCode::EaseUnknown);
  // Rigid products 1.5 mm over both sides: common practice, no published source.
  EXPECT_EQ(easeFor(ProductShape::Box, Ease::Easy), Length::mm(1.5));
}

}  // namespace
}  // namespace creasewright
