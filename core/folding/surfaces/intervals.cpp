#include "folding/surfaces/intervals.h"

#include <algorithm>

namespace creasewright {

std::vector<Interval> without(std::vector<Interval> taken, double smallest) {
  std::sort(taken.begin(), taken.end(),
            [](const Interval& a, const Interval& b) { return a.from < b.from; });
  std::vector<Interval> left;
  double reached = 0;
  for (const Interval& part : taken) {
    const double end = std::min(part.from, 1.0);
    if (end - reached > smallest) left.push_back({reached, end});
    reached = std::max(reached, part.to);
  }
  if (1 - reached > smallest) left.push_back({reached, 1});
  return left;
}

}  // namespace creasewright
