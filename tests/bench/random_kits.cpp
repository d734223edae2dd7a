#include "core/cutting/random_kits.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string_view>

#include <sys/resource.h>

#include "core/cutting/plan_check.h"
#include "cutting/fewer_settings.h"
#include "cutting/plan_cutting.h"

// Plans random kits of a kind (core/cutting/random_kits.h). Prints each plan with its bound and
// seconds of CPU, how many are proven, and the settings and cuts of all layouts. Exit 1: a plan is
// faulty, or contradicts the cost that a kit was made with.
//   creasewright_random_kits [kits] [seed] [most sizes] [fewest sizes]
//   creasewright_random_kits whole|large [kits] [seed]

namespace creasewright {
namespace {

class Table {
 public:
  void add(unsigned seed, const testing::RandomKit& kit) {
    ++kits_;
    const std::clock_t start = std::clock();
    const auto plan = planCutting(kit.stock, kit.demands);
    const double took = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    seconds_.push_back(took);
    if (!plan) {
      std::printf("kit %4u: no plan\n", seed);
      fine_ = false;
      return;
    }
    std::string fault = testing::planFault(*plan, kit.stock, kit.demands);
    if (kit.least > 0 && plan->bound > kit.least) fault += "the bound is false";
    const double gap = 100.0 * static_cast<double>(plan->cost - plan->bound) /
                       static_cast<double>(std::max<std::int64_t>(1, plan->bound));
    std::printf(
        "kit %4u  kinds %zu  sizes %2zu  cost %6lld  bound %6lld  gap %5.2f %%  %5.2f s, counted "
        "%4.2f s %s\n",
        seed, kit.stock.size(), kit.demands.size(), static_cast<long long>(plan->cost),
        static_cast<long long>(plan->bound), gap, took, plan->work, fault.c_str());
    fine_ = fine_ && fault.empty();
    proven_ += plan->proven() ? 1 : 0;
    worst_ = std::max(worst_, gap);
    gaps_ += gap;
    costs_ += plan->cost;
    bounds_ += plan->bound;
    for (const Layout& layout : plan->layouts) {
      const TrimEffort effort = trimEffort(layout.sheet);
      ++layouts_;
      settings_ += effort.settings;
      cuts_ += effort.cuts;
    }
  }

  /// Whether every plan was sound.
  bool sum() {
    if (seconds_.empty()) return false;
    std::ranges::sort(seconds_);
    double all = 0;
    for (const double s : seconds_) all += s;
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    std::printf(
        "%d of %d proven, mean gap %.3f %%, largest %.2f %%, %lld of %lld: %.3f %% in sum\n",
        proven_, kits_, gaps_ / kits_, worst_, static_cast<long long>(costs_),
        static_cast<long long>(bounds_),
        100.0 * static_cast<double>(costs_ - bounds_) /
            static_cast<double>(std::max<std::int64_t>(1, bounds_)));
    std::printf("%.1f s in all, median %.2f s, slowest %.2f s, %ld MB at most\n", all,
                seconds_[seconds_.size() / 2], seconds_.back(), used.ru_maxrss / 1024);
    std::printf("%d layouts, %d settings of the trimmer, %d cuts\n", layouts_, settings_, cuts_);
    return fine_;
  }

 private:
  int kits_ = 0;
  int proven_ = 0;
  double worst_ = 0;
  double gaps_ = 0;
  std::int64_t costs_ = 0;
  std::int64_t bounds_ = 0;
  std::vector<double> seconds_;
  int layouts_ = 0;
  int settings_ = 0;
  int cuts_ = 0;
  bool fine_ = true;
};

}  // namespace
}  // namespace creasewright

int main(int count, char** words) {
  using namespace creasewright;
  std::setvbuf(stdout, nullptr, _IOLBF, BUFSIZ);
  const std::string_view kind = count > 1 ? words[1] : "";
  const int before = kind == "whole" || kind == "large" ? 1 : 0;  // words of the kind
  const auto word = [&](int n, int otherwise) {
    return count > n + before ? std::atoi(words[n + before]) : otherwise;
  };
  Table table;
  const auto first = static_cast<unsigned>(word(2, 1));
  for (unsigned seed = first; seed < first + static_cast<unsigned>(word(1, 100)); ++seed)
    table.add(seed, kind == "whole"   ? testing::wholeSheetsKit(seed)
                    : kind == "large" ? testing::largeSheetKit(seed)
                                      : testing::randomKit(seed, word(4, 3), word(3, 12)));
  return table.sum() ? 0 : 1;
}
