#include "kits/cut_tree.h"

#include <gtest/gtest.h>

#include "core/kits/plan_check.h"
#include "kits/neat_layout.h"
#include "kits/plan_cutting.h"
#include "kits/trim_steps.h"
#include "support/random.h"

namespace creasewright {
namespace {

Length mm(double value) { return Length::mm(value); }

CutNode sheetOf(double width, double height) {
  CutNode sheet;
  sheet.width = mm(width);
  sheet.height = mm(height);
  return sheet;
}

/// Cuts a rectangle at random places into blanks of random demands and offcuts.
CutNode cutAtRandom(const CutNode& frame, int depth, testing::Random& random) {
  if (depth == 0 || random.whole(0, 3) == 0) {
    CutNode leaf = frame;
    leaf.kind = random.whole(0, 2) == 0 ? CutNode::Kind::Offcut : CutNode::Kind::Blank;
    if (leaf.kind == CutNode::Kind::Blank) leaf.demand = random.whole(0, 2);
    return leaf;
  }
  const bool upright = random.whole(0, 1) == 1;
  const Length side = upright ? frame.width : frame.height;
  CutNode node = cutAt(frame, upright, side * random.whole(1, 3) / 4);
  for (CutNode& part : node.parts) part = cutAtRandom(part, depth - 1, random);
  return node;
}

using Sizes = std::vector<std::array<std::int64_t, 3>>;

/// Demand and sizes of every blank, sorted.
Sizes blanksIn(const CutNode& sheet) {
  Sizes sizes;
  eachNode(sheet, [&](const CutNode& node) {
    if (node.kind == CutNode::Kind::Blank)
      sizes.push_back({node.demand, node.width.nm(), node.height.nm()});
  });
  std::ranges::sort(sizes);
  return sizes;
}

/// What is wrong with a tree's rectangles; empty when nothing is.
std::string treeFault(const CutNode& node) {
  if (node.kind != CutNode::Kind::Cut) return node.parts.empty() ? "" : "a leaf has parts";
  if (node.parts.size() != 2) return "a cut without two parts";
  const CutNode& a = node.parts[0];
  const CutNode& b = node.parts[1];
  const Length zero;
  if (node.at <= zero) return "a cut on the edge";
  if (a.x != node.x || a.y != node.y) return "the first part lies elsewhere";
  const bool fits = node.upright
                        ? a.width == node.at && b.x == node.x + node.at && b.y == node.y &&
                              a.width + b.width == node.width && a.height == node.height &&
                              b.height == node.height && b.width > zero
                        : a.height == node.at && b.y == node.y + node.at && b.x == node.x &&
                              a.height + b.height == node.height && a.width == node.width &&
                              b.width == node.width && b.height > zero;
  if (!fits) return "the parts do not fill the rectangle";
  const std::string first = treeFault(a);
  return first.empty() ? treeFault(b) : first;
}

std::size_t cutsOf(const CutNode& sheet) {
  std::size_t cuts = 0;
  eachNode(sheet, [&](const CutNode& node) { cuts += node.kind == CutNode::Kind::Cut; });
  return cuts;
}

TEST(CutTree, TidyingKeepsTheBlanksAndNeverAddsACut) {
  testing::Random random(611);
  int shorter = 0;
  for (int round = 0; round < 400; ++round) {
    const CutNode before = cutAtRandom(sheetOf(200, 320), 5, random);
    const CutNode after = tidied(before);
    EXPECT_EQ(treeFault(after), "");
    EXPECT_EQ(blanksIn(after), blanksIn(before));
    EXPECT_LE(cutsOf(after), cutsOf(before));
    shorter += cutsOf(after) < cutsOf(before);
  }
  EXPECT_GT(shorter, 50);
}

/// Along each direction alike parts lie together and one offcut comes last.
TEST(CutTree, AlikePartsLieSideBySide) {
  testing::Random random(612);
  for (int round = 0; round < 200; ++round) {
    const CutNode sheet = tidied(cutAtRandom(sheetOf(240, 240), 4, random));
    eachNode(sheet, [](const CutNode& node) {
      if (node.kind != CutNode::Kind::Cut) return;
      const std::vector<const CutNode*> parts = partsAlong(node);
      for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
        EXPECT_NE(parts[i]->kind, CutNode::Kind::Offcut);
        for (std::size_t k = i + 2; k < parts.size(); ++k)
          EXPECT_TRUE(!cutAlike(*parts[i], *parts[k]) || cutAlike(*parts[i], *parts[i + 1]));
      }
    });
  }
}

/// Twelve blanks of 59 x 120 mm on a 12 in sheet: five rows of two and two upright ones beside. The
/// planner had found them in a tangle of eighteen settings.
TEST(NeatLayout, TwelveStripsTakeSixSettings) {
  const std::vector<BlankDemand> demands{{"mat", mm(59), mm(120), 12}};
  const auto neat = neatLayout(mm(304.8), mm(304.8), demands, {12});
  ASSERT_TRUE(neat);
  EXPECT_EQ(treeFault(*neat), "");
  EXPECT_EQ(blanksIn(*neat).size(), 12U);
  EXPECT_LE(trimSteps({0, 1, *neat}).size(), 6U);
}

/// Rows of one blank: one setting for the rows, one for the blanks.
TEST(NeatLayout, AGridTakesTwoSettings) {
  const std::vector<BlankDemand> demands{{"card", mm(50), mm(80), 12, false}};
  const auto neat = neatLayout(mm(200), mm(240), demands, {12});
  ASSERT_TRUE(neat);
  const std::vector<TrimStep> steps = trimSteps({0, 1, *neat});
  ASSERT_EQ(steps.size(), 2U);
  EXPECT_EQ(steps[0].cuts, steps[0].pieces - 1);  // the last strip is as wide
  EXPECT_EQ(steps[1].parts, steps[0].pieces);
  EXPECT_EQ(steps[1].pieces * steps[1].parts, 12);
}

TEST(NeatLayout, MakesExactlyTheBlanksAskedForOrNone) {
  testing::Random random(613);
  int found = 0;
  for (int round = 0; round < 60; ++round) {
    std::vector<BlankDemand> demands;
    std::vector<int> counts;
    const int kinds = random.whole(1, 4);
    for (int k = 0; k < kinds; ++k) {
      demands.push_back({std::to_string(k), mm(random.whole(30, 140)), mm(random.whole(30, 140)), 1,
                         random.whole(0, 1) == 1});
      counts.push_back(random.whole(0, 4));
    }
    if (std::ranges::count(counts, 0) == kinds) continue;
    const auto neat = neatLayout(mm(300), mm(300), demands, counts);
    if (!neat) continue;
    ++found;
    EXPECT_EQ(treeFault(*neat), "");
    CuttingPlan plan;
    plan.layouts = {{0, 1, *neat}};
    plan.sheets = 1;
    for (std::size_t k = 0; k < counts.size(); ++k) demands[k].quantity = counts[k];
    EXPECT_EQ(testing::planFault(plan, {{"s", mm(300), mm(300)}}, demands), "");
    int sum = 0;
    for (const int count : counts) sum += count;
    EXPECT_EQ(blanksIn(*neat).size(), static_cast<std::size_t>(sum));
  }
  EXPECT_GT(found, 10);
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
