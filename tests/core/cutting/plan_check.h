#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "cutting/cutting.h"

// Judges a cutting plan from the placed rectangles alone; knows nothing of how plans are made.

namespace creasewright::testing {

struct Placed {
  std::int64_t x, y, w, h;
  int demand;
  bool turned;
};

/// Whether rectangles can be parted by cuts from edge to edge: some line passes between them, and
/// then both parts can be parted again.
inline bool isGuillotine(const std::vector<Placed>& parts) {
  if (parts.size() < 2) return true;
  for (const bool upright : {true, false}) {
    const auto low = [&](const Placed& p) { return upright ? p.x : p.y; };
    const auto high = [&](const Placed& p) { return upright ? p.x + p.w : p.y + p.h; };
    std::vector<std::int64_t> places;
    for (const Placed& p : parts) places.push_back(high(p));
    for (const std::int64_t at : places) {
      std::vector<Placed> before;
      std::vector<Placed> after;
      bool clear = true;
      for (const Placed& p : parts) {
        if (high(p) <= at)
          before.push_back(p);
        else if (low(p) >= at)
          after.push_back(p);
        else
          clear = false;
      }
      if (clear && !before.empty() && !after.empty())
        return isGuillotine(before) && isGuillotine(after);
    }
  }
  return false;
}

/// What is wrong with a plan, in words; empty when nothing is.
inline std::string planFault(const CuttingPlan& plan, const std::vector<CutSheet>& stock,
                             const std::vector<BlankDemand>& demands) {
  std::vector<int> have(demands.size(), 0);
  std::vector<int> used(stock.size(), 0);
  int sheets = 0;
  for (const Layout& layout : plan.layouts) {
    const CutSheet& sheet = stock.at(static_cast<std::size_t>(layout.stock));
    sheets += layout.count;
    used[static_cast<std::size_t>(layout.stock)] += layout.count;
    std::vector<Placed> parts;
    eachNode(layout.sheet, [&](const CutNode& n) {
      if (n.kind == CutNode::Kind::Blank)
        parts.push_back({n.x.nm(), n.y.nm(), n.width.nm(), n.height.nm(), n.demand, n.turned});
    });
    for (const Placed& p : parts) {
      const BlankDemand& demand = demands.at(static_cast<std::size_t>(p.demand));
      have[static_cast<std::size_t>(p.demand)] += layout.count;
      if (p.turned && !(demand.mayTurn && sheet.mayTurn)) return demand.name + " is turned";
      const std::int64_t w = p.turned ? demand.height.nm() : demand.width.nm();
      const std::int64_t h = p.turned ? demand.width.nm() : demand.height.nm();
      if (p.w != w || p.h != h) return demand.name + " has another size";
      if (p.x < 0 || p.y < 0 || p.x + p.w > sheet.width.nm() || p.y + p.h > sheet.height.nm())
        return demand.name + " lies over the edge";
    }
    for (std::size_t i = 0; i < parts.size(); ++i)
      for (std::size_t k = 0; k < i; ++k)
        if (parts[i].x < parts[k].x + parts[k].w && parts[k].x < parts[i].x + parts[i].w &&
            parts[i].y < parts[k].y + parts[k].h && parts[k].y < parts[i].y + parts[i].h)
          return "blanks overlap";
    if (!isGuillotine(parts)) return "a layout needs a cut that does not run edge to edge";
  }
  for (std::size_t d = 0; d < demands.size(); ++d)
    if (have[d] < demands[d].quantity) return demands[d].name + " is short";
  for (std::size_t s = 0; s < stock.size(); ++s)
    if (stock[s].atHand >= 0 && used[s] > stock[s].atHand) return "more sheets than at hand";
  if (sheets != plan.sheets) return "the number of sheets is wrong";
  if (plan.bound > plan.cost) return "the bound is above the cost";
  return {};
}

}  // namespace creasewright::testing
