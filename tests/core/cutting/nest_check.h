#pragma once

#include <gtest/gtest.h>

#include "cutting/nesting.h"

namespace creasewright::testing {

/// Nothing overlaps or comes closer than the gap, all lies on the mat, every part is there.
inline void expectSound(const std::vector<NestPart>& parts, const std::vector<MatLayout>& layouts,
                        double width, double height, double gap) {
  std::vector<int> made(parts.size(), 0);
  for (const MatLayout& layout : layouts) {
    std::vector<Region> wide;
    for (const NestedPart& nested : layout.parts) {
      const NestPart& part = parts[static_cast<std::size_t>(nested.part)];
      made[static_cast<std::size_t>(nested.part)] += layout.count;
      if (!part.mayTurn) {
        EXPECT_EQ(nested.quarters, 0);
      }
      const Polygon outline = nestedOutline(part, nested);
      const Bounds box = bounds(outline);
      EXPECT_GE(std::min(box.low.x, box.low.y), gap - 1e-6);
      EXPECT_LE(box.high.x, width - gap + 1e-6);
      EXPECT_LE(box.high.y, height - gap + 1e-6);
      // Half the gap all round, a little less for rounding at mitred corners.
      wide.push_back(offset(region(outline), gap / 2 * 0.7));
      for (std::size_t k = 0; k + 1 < wide.size(); ++k)
        EXPECT_LT(area(intersect(wide[k], wide.back())), 1e-3);
    }
  }
  for (std::size_t i = 0; i < parts.size(); ++i) EXPECT_EQ(made[i], parts[i].quantity);
}

}  // namespace creasewright::testing
