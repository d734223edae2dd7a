#include "lettering/type_width.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

TEST(TypeWidth, AddsUpAdvancesAndScales) {
  // 278/1000 for i and 975/1000 for m: DejaVu Sans 2.37, table hmtx (569 and 1995 of 2048).
  EXPECT_NEAR(typeWidth("im", 10), 10 * (569 + 1995) / 2048.0, 0.02);
  EXPECT_DOUBLE_EQ(typeWidth("", 10), 0);
  EXPECT_NEAR(typeWidth("im", 20), 2 * typeWidth("im", 10), 1e-9);
}

TEST(TypeWidth, BoldIsWiderAndUmlautsCountOnce) {
  EXPECT_GT(typeWidth("Falten", 4, true), typeWidth("Falten", 4));
  EXPECT_DOUBLE_EQ(typeWidth("\u00fc", 4), typeWidth("u", 4));
  EXPECT_DOUBLE_EQ(typeWidth("\u6298", 10), 10.5);  // of no face that we measured
}

/// Cut short or not UTF-8 at all: no reading beyond the end.
TEST(TypeWidth, BrokenTextIsMeasuredToo) {
  EXPECT_GT(typeWidth("\xE2\x82", 4), 0);
  EXPECT_GT(typeWidth("\xFF", 4), 0);
}

}  // namespace
}  // namespace creasewright
