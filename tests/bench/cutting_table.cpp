#include <array>
#include <chrono>
#include <cstdio>

#include "core/cutting/instances.h"
#include "core/cutting/plan_check.h"
#include "cutting/plan_cutting.h"

// Prints our plans of the open instances gcut1d .. gcut12d beside the bound and the best that is
// known (fixed: published by Cintra et al. 2008; turned: the lower bound that stands beside the
// instances).

namespace creasewright {
namespace {

constexpr std::array<int, 12> kFixed{294, 345, 332, 836, 197, 343, 591, 690, 131, 293, 330, 672};
constexpr std::array<int, 12> kTurned{291, 282, 313, 836, 174, 301, 542, 650, 122, 270, 298, 601};

bool printRow(int number, bool mayTurn) {
  const auto task = testing::readTask(number, mayTurn);
  if (!task) return false;
  const auto start = std::chrono::steady_clock::now();
  const auto plan = planCutting(task->stock, task->demands);
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
  if (!plan) return false;
  const std::string fault = testing::planFault(*plan, task->stock, task->demands);
  const auto known = (mayTurn ? kTurned : kFixed).at(static_cast<std::size_t>(number - 1));
  std::printf(
      "gcut%-3d %-7s sizes %2zu  ours %3d  bound %3lld  known %3d  layouts %2zu  %5.2f s %s\n",
      number, mayTurn ? "turned" : "fixed", task->demands.size(), plan->sheets,
      static_cast<long long>(plan->bound), known, plan->layouts.size(), took.count(),
      fault.c_str());
  return fault.empty();
}

}  // namespace
}  // namespace creasewright

int main() {
  bool fine = true;
  for (const bool mayTurn : {false, true})
    for (int number = 1; number <= 12; ++number)
      fine = creasewright::printRow(number, mayTurn) && fine;
  return fine ? 0 : 1;
}
