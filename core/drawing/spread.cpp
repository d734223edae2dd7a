#include "drawing/spread.h"

#include <cstddef>

namespace creasewright {

std::vector<double> spreadApart(const std::vector<double>& sorted, double gap) {
  struct Pool {
    double sum = 0;
    std::size_t count = 0;
    [[nodiscard]] double mean() const { return sum / static_cast<double>(count); }
  };
  // With the gaps taken out, "at least gap apart" is "not decreasing".
  std::vector<Pool> pools;
  for (std::size_t i = 0; i < sorted.size(); ++i) {
    pools.push_back({sorted[i] - gap * static_cast<double>(i), 1});
    while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
      const Pool last = pools.back();
      pools.pop_back();
      pools.back().sum += last.sum;
      pools.back().count += last.count;
    }
  }
  std::vector<double> moved;
  for (const Pool& pool : pools)
    for (std::size_t k = 0; k < pool.count; ++k)
      moved.push_back(pool.mean() + gap * static_cast<double>(moved.size()));
  return moved;
}

}  // namespace creasewright
