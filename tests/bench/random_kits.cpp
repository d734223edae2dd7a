#include "core/cutting/random_kits.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>

#include "core/cutting/plan_check.h"
#include "cutting/fewer_settings.h"
#include "cutting/plan_cutting.h"

// Plans random class kits of the harder kind (core/cutting/random_kits.h). Prints each plan with
// its bound and seconds of CPU, how many are proven, and the settings and cuts of all layouts.
//   creasewright_random_kits [kits] [seed] [most sizes] [fewest sizes]

int main(int count, char** words) {
  using namespace creasewright;
  const auto word = [&](int n, int otherwise) {
    return count > n ? std::atoi(words[n]) : otherwise;
  };
  const int kits = word(1, 100);
  const int first = word(2, 1);
  int proven = 0;
  double worst = 0;
  double gaps = 0;
  double slowest = 0;
  double all = 0;
  int layouts = 0;
  int settings = 0;
  int cuts = 0;
  bool fine = true;
  for (int k = 0; k < kits; ++k) {
    const testing::RandomKit kit =
        testing::randomKit(static_cast<unsigned>(first + k), word(4, 3), word(3, 12));
    const std::clock_t start = std::clock();
    const auto plan = planCutting(kit.stock, kit.demands);
    const double took = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    if (!plan) {
      std::printf("kit %d: no plan\n", first + k);
      fine = false;
      continue;
    }
    const std::string fault = testing::planFault(*plan, kit.stock, kit.demands);
    const double gap = 100.0 * static_cast<double>(plan->cost - plan->bound) /
                       static_cast<double>(std::max<std::int64_t>(1, plan->bound));
    std::printf(
        "kit %4d  kinds %zu  sizes %2zu  cost %6lld  bound %6lld  gap %5.2f %%  %5.2f s %s\n",
        first + k, kit.stock.size(), kit.demands.size(), static_cast<long long>(plan->cost),
        static_cast<long long>(plan->bound), gap, took, fault.c_str());
    fine = fine && fault.empty();
    proven += plan->proven() ? 1 : 0;
    worst = std::max(worst, gap);
    gaps += gap;
    for (const Layout& layout : plan->layouts) {
      const TrimEffort effort = trimEffort(layout.sheet);
      ++layouts;
      settings += effort.settings;
      cuts += effort.cuts;
    }
    slowest = std::max(slowest, took);
    all += took;
  }
  std::printf("%d of %d proven, mean gap %.3f %%, largest %.2f %%, %.1f s in all, slowest %.2f s\n",
              proven, kits, gaps / std::max(1, kits), worst, all, slowest);
  std::printf("%d layouts, %d settings of the trimmer, %d cuts\n", layouts, settings, cuts);
  return fine ? 0 : 1;
}
