#include "drawing/contrast.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

constexpr Colour kWhite{255, 255, 255};

// Ratios as they follow from WCAG 2.1, computed by hand from its formula: black on white 21,
// #767676 4.542, #777777 4.478, #595959 7.005, #949494 3.033.
TEST(Contrast, IsThatOfTheGuidelines) {
  EXPECT_NEAR(contrast({0, 0, 0}, kWhite), 21, 1e-9);
  EXPECT_NEAR(contrast(kWhite, {0x76, 0x76, 0x76}), 4.542, 5e-4);
  EXPECT_NEAR(contrast({0x77, 0x77, 0x77}, kWhite), 4.478, 5e-4);
  EXPECT_NEAR(contrast({0x59, 0x59, 0x59}, kWhite), 7.005, 5e-4);
  EXPECT_NEAR(contrast({0x94, 0x94, 0x94}, kWhite), 3.033, 5e-4);
}

/// Darker by no more than it takes, and of the same hue.
TEST(Contrast, ATonesHueStays) {
  const Colour rust{0xB3, 0x5A, 0x00};
  const Colour tone = darkened(rust, kWhite, 7);
  EXPECT_GE(contrast(tone, kWhite), 7);
  EXPECT_LT(contrast(tone, kWhite), 7.3);
  EXPECT_GT(tone.red, tone.green);
  EXPECT_EQ(tone.blue, 0);
  EXPECT_EQ(darkened({0, 0, 0x20}, kWhite, 7), (Colour{0, 0, 0x20}));
}

}  // namespace
}  // namespace creasewright
