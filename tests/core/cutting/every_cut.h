#pragma once

#include <algorithm>
#include <climits>
#include <functional>
#include <map>
#include <set>
#include <vector>

#include "cutting/cutting.h"

// The oracle of small cutting plans: every count vector that guillotine cuts at every whole
// position give, and the least number of sheets by trying everything. It knows no raster, no bound
// and none of the planner's code.

namespace creasewright::testing {

struct SmallBlank {
  int width = 1;
  int height = 1;
  bool mayTurn = false;
  int demand = 1;
};

using SmallCounts = std::vector<int>;

class EveryCut {
 public:
  explicit EveryCut(std::vector<SmallBlank> blanks) : blanks_(std::move(blanks)) {}

  /// The count vectors of a part, none above the demand, none covered by another.
  const std::set<SmallCounts>& of(int width, int height) {
    const auto known = parts_.find({width, height});
    if (known != parts_.end()) return known->second;
    std::set<SmallCounts> found{SmallCounts(blanks_.size(), 0)};
    for (std::size_t b = 0; b < blanks_.size(); ++b) {
      const SmallBlank& blank = blanks_[b];
      if ((blank.width <= width && blank.height <= height) ||
          (blank.mayTurn && blank.height <= width && blank.width <= height)) {
        SmallCounts one(blanks_.size(), 0);
        one[b] = 1;
        found.insert(one);
      }
    }
    for (int at = 1; 2 * at <= width; ++at) join(of(at, height), of(width - at, height), found);
    for (int at = 1; 2 * at <= height; ++at) join(of(width, at), of(width, height - at), found);
    return parts_[{width, height}] = maximal(found);
  }

  static std::set<SmallCounts> maximal(const std::set<SmallCounts>& all) {
    std::set<SmallCounts> kept;
    for (const SmallCounts& a : all)
      if (std::ranges::none_of(all, [&](const SmallCounts& b) { return a != b && covers(b, a); }))
        kept.insert(a);
    return kept;
  }

  static bool covers(const SmallCounts& a, const SmallCounts& b) {
    for (std::size_t i = 0; i < a.size(); ++i)
      if (a[i] < b[i]) return false;
    return true;
  }

 private:
  void join(const std::set<SmallCounts>& a, const std::set<SmallCounts>& b,
            std::set<SmallCounts>& found) const {
    for (const SmallCounts& x : a)
      for (const SmallCounts& y : b) {
        SmallCounts sum = x;
        for (std::size_t i = 0; i < sum.size(); ++i)
          sum[i] = std::min(sum[i] + y[i], blanks_[i].demand);
        found.insert(std::move(sum));
      }
  }

  std::vector<SmallBlank> blanks_;
  std::map<std::pair<int, int>, std::set<SmallCounts>> parts_;
};

/// A kind of sheet of the oracle, with the vectors that one gives.
struct SmallSheet {
  int cost = 1;
  int atHand = -1;  ///< -1 = any number
  std::set<SmallCounts> patterns;
};

/// The least cost that covers `demand`, by trying everything; INT_MAX when nothing does.
inline int leastCost(const std::vector<SmallSheet>& sheets, const SmallCounts& demand) {
  std::map<std::vector<int>, int> known;
  const std::function<int(const SmallCounts&, const std::vector<int>&)> rest =
      [&](const SmallCounts& open, const std::vector<int>& left) -> int {
    if (std::ranges::all_of(open, [](int n) { return n <= 0; })) return 0;
    std::vector<int> key = open;
    key.insert(key.end(), left.begin(), left.end());
    if (const auto found = known.find(key); found != known.end()) return found->second;
    int best = INT_MAX;
    for (std::size_t s = 0; s < sheets.size(); ++s) {
      if (left[s] == 0) continue;
      std::vector<int> fewer = left;
      if (fewer[s] > 0) --fewer[s];
      for (const SmallCounts& pattern : sheets[s].patterns) {
        SmallCounts after = open;
        bool helps = false;
        for (std::size_t i = 0; i < after.size(); ++i) {
          helps = helps || (pattern[i] > 0 && after[i] > 0);
          after[i] = std::max(0, after[i] - pattern[i]);
        }
        if (!helps) continue;
        const int more = rest(after, fewer);
        if (more < INT_MAX) best = std::min(best, sheets[s].cost + more);
      }
    }
    return known[key] = best;
  };
  std::vector<int> left;
  for (const SmallSheet& sheet : sheets) left.push_back(sheet.atHand);
  return rest(demand, left);
}

}  // namespace creasewright::testing
