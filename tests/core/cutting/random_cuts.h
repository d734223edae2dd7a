#pragma once

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/cutting/plan_check.h"
#include "cutting/cut_tree.h"
#include "support/random.h"

namespace creasewright::testing {

inline Length mm(double value) { return Length::mm(value); }

inline CutNode sheetOf(double width, double height) {
  CutNode sheet;
  sheet.width = mm(width);
  sheet.height = mm(height);
  return sheet;
}

/// Cuts a rectangle at random places into blanks of random demands and offcuts.
inline CutNode cutAtRandom(const CutNode& frame, int depth, Random& random) {
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
inline Sizes blanksIn(const CutNode& sheet) {
  Sizes sizes;
  eachNode(sheet, [&](const CutNode& node) {
    if (node.kind == CutNode::Kind::Blank)
      sizes.push_back({node.demand, node.width.nm(), node.height.nm()});
  });
  std::ranges::sort(sizes);
  return sizes;
}

/// What is wrong with a tree's rectangles; empty when nothing is.
inline std::string treeFault(const CutNode& node) {
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

inline std::size_t cutsOf(const CutNode& sheet) {
  std::size_t cuts = 0;
  eachNode(sheet, [&](const CutNode& node) { cuts += node.kind == CutNode::Kind::Cut; });
  return cuts;
}

/// One sheet of that size gives exactly the quantities of the demands, soundly.
inline void expectExactly(const CutNode& sheet, Length width, Length height,
                          const std::vector<BlankDemand>& demands) {
  EXPECT_EQ(treeFault(sheet), "");
  CuttingPlan plan;
  plan.layouts = {{0, 1, sheet}};
  plan.sheets = 1;
  EXPECT_EQ(planFault(plan, {{width, height}}, demands), "");
  int sum = 0;
  for (const BlankDemand& demand : demands) sum += demand.quantity;
  EXPECT_EQ(blanksIn(sheet).size(), static_cast<std::size_t>(sum));
}

}  // namespace creasewright::testing
