#include <gtest/gtest.h>

#include "core/cutting/random_kits.h"
#include "cutting/fewer_settings.h"
#include "cutting/plan_cutting.h"
#include "support/golden.h"

namespace creasewright {
namespace {

std::string lineOf(const std::string& name, const testing::RandomKit& kit) {
  const auto plan = planCutting(kit.stock, kit.demands);
  if (!plan) return name + " no plan\n";
  std::size_t sheets = 0;
  int settings = 0;
  int cuts = 0;
  for (const Layout& layout : plan->layouts) {
    const TrimEffort effort = trimEffort(layout.sheet);
    sheets += static_cast<std::size_t>(layout.count);
    settings += effort.settings;
    cuts += effort.cuts;
  }
  return name + " cost " + std::to_string(plan->cost) + " bound " + std::to_string(plan->bound) +
         " sheets " + std::to_string(sheets) + " layouts " + std::to_string(plan->layouts.size()) +
         " settings " + std::to_string(settings) + " cuts " + std::to_string(cuts) + '\n';
}

// What plans of random kits came to when somebody last looked: a search that finds less, proves
// less or sets the trimmer more often shows up here. Better numbers are accepted.
TEST(AcceptedPlans, CostBoundAndEffortAreAsBefore) {
  std::string lines;
  for (unsigned seed = 1; seed <= 16; ++seed) {
    const std::string number = std::to_string(seed);
    lines += lineOf("priced-" + number, testing::randomKit(seed, 2, 8));
    lines += lineOf("whole-" + number, testing::wholeSheetsKit(seed));
  }
  testing::expectGolden("accepted/plans.txt", lines);
}

}  // namespace
}  // namespace creasewright
