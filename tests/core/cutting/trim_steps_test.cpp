#include "cutting/trim_steps.h"

#include <gtest/gtest.h>

#include "core/cutting/random_cuts.h"
#include "cutting/plan_cutting.h"

namespace creasewright {
namespace {

using testing::cutAtRandom;
using testing::cutsOf;
using testing::mm;
using testing::sheetOf;

struct Part {
  std::int64_t x, y, w, h;
  bool operator==(const Part&) const = default;
};

/// Cuts the one part that the line parts from edge to edge, as far from its edge as the blade was
/// set.
void cutThrough(const TrimStep& step, const CutLine& cut, std::vector<Part>& parts) {
  const std::int64_t at = step.setting.nm();
  const auto part = std::ranges::find_if(parts, [&](const Part& p) {
    return step.upright ? p.x + at == cut.x.nm() && p.y == cut.y.nm() && p.h == cut.length.nm() &&
                              cut.x.nm() < p.x + p.w
                        : p.y + at == cut.y.nm() && p.x == cut.x.nm() && p.w == cut.length.nm() &&
                              cut.y.nm() < p.y + p.h;
  });
  ASSERT_NE(part, parts.end()) << step.number;
  const Part whole = *part;
  parts.erase(part);
  if (step.upright) {
    parts.push_back({whole.x, whole.y, at, whole.h});
    parts.push_back({whole.x + at, whole.y, whole.w - at, whole.h});
  } else {
    parts.push_back({whole.x, whole.y, whole.w, at});
    parts.push_back({whole.x, whole.y + at, whole.w, whole.h - at});
  }
}

TEST(TrimSteps, CutsRunFromEdgeToEdge) {
  const std::vector<CutSheet> stock{{mm(215.9), mm(279.4)}};
  const std::vector<BlankDemand> demands{{"a", mm(90), mm(60), 9}, {"b", mm(120), mm(45), 5}};
  const auto plan = planCutting(stock, demands);
  ASSERT_TRUE(plan);
  for (const Layout& layout : plan->layouts) {
    std::vector<Part> parts{{0, 0, stock[0].width.nm(), stock[0].height.nm()}};
    for (const TrimStep& step : trimSteps(layout))
      for (const CutLine& cut : step.lines) cutThrough(step, cut, parts);
    eachNode(layout.sheet, [&](const CutNode& node) {
      if (node.kind != CutNode::Kind::Blank) return;
      const Part blank{node.x.nm(), node.y.nm(), node.width.nm(), node.height.nm()};
      EXPECT_EQ(std::ranges::count(parts, blank), 1);
    });
  }
}

/// Every blank of a layout comes off in exactly one step.
TEST(TrimSteps, CountEveryBlankOnce) {
  testing::Random random(614);
  for (int round = 0; round < 200; ++round) {
    const Layout layout{0, 1, tidied(cutAtRandom(sheetOf(280, 200), 5, random))};
    if (layout.sheet.kind != CutNode::Kind::Cut) continue;
    std::vector<int> told(3, 0);
    std::size_t lines = 0;
    for (const TrimStep& step : trimSteps(layout)) {
      if (step.demand >= 0) told[static_cast<std::size_t>(step.demand)] += step.pieces * step.parts;
      if (step.restDemand >= 0) told[static_cast<std::size_t>(step.restDemand)] += step.parts;
      EXPECT_EQ(step.lines.size(), static_cast<std::size_t>(step.cuts * step.parts));
      lines += step.lines.size();
    }
    EXPECT_EQ(told, blanksOf(layout, 3));
    EXPECT_EQ(lines, cutsOf(layout.sheet));
  }
}

}  // namespace
}  // namespace creasewright
