#include "cutting/cost_bound.h"

#include <algorithm>
#include <limits>

namespace creasewright {
namespace {

constexpr double kEndless = std::numeric_limits<double>::infinity();

/// The bound when all worths are multiplied by `share`.
double boundAt(double share, double demanded, const std::vector<SheetValue>& sheets) {
  double bound = share * demanded;
  for (const SheetValue& sheet : sheets)
    if (sheet.atHand >= 0)
      bound += sheet.atHand * std::min(0.0, static_cast<double>(sheet.cost) - share * sheet.most);
  return bound;
}

}  // namespace

CostBound costBound(double demanded, const std::vector<SheetValue>& sheets) {
  // The bound is concave in the share, with a bend where a limited kind begins to be worth more
  // than it costs; no unlimited kind may.
  double largest = kEndless;
  double held = 0;
  for (const SheetValue& sheet : sheets) {
    if (sheet.most <= 0) continue;
    if (sheet.atHand < 0) largest = std::min(largest, static_cast<double>(sheet.cost) / sheet.most);
    held += sheet.atHand * sheet.most;
  }
  if (largest == kEndless && demanded > held) return {kEndless, 0};
  CostBound best;
  const auto look = [&](double share) {
    const double cost = boundAt(share, demanded, sheets);
    if (cost > best.cost) best = {cost, share};
  };
  if (largest < kEndless) look(largest);
  for (const SheetValue& sheet : sheets) {
    if (sheet.atHand < 0 || sheet.most <= 0) continue;
    const double share = static_cast<double>(sheet.cost) / sheet.most;
    if (share < largest) look(share);
  }
  return best;
}

}  // namespace creasewright
