#include "drawing/number_text.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

TEST(NumberText, NoTrailingZerosNoMinusZero) {
  EXPECT_EQ(numberText(0), "0");
  EXPECT_EQ(numberText(-0.00001), "0");
  EXPECT_EQ(numberText(100), "100");
  EXPECT_EQ(numberText(2.5), "2.5");
  EXPECT_EQ(numberText(-2.50004), "-2.5");
  EXPECT_EQ(numberText(1.0 / 3, 6), "0.333333");
}

}  // namespace
}  // namespace creasewright
