#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "kits/plan_kit.h"
#include "papers/kit/kit_pages.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

/// Six designs for so many people.
ClassKit kitFor(int takers) {
  ClassKit kit;
  kit.takers = takers;
  kit.stock = {{"12x12", Length::inches(12), Length::inches(12)},
               {"tabloid", Length::inches(11), Length::inches(17)},
               {"20 x 26 in", Length::inches(20), Length::inches(26)}};
  for (const char* style : {"two-piece-box", "belly-band", "pillow-box", "envelope",
                            "straight-tuck-box", "crossed-seam-pouch"})
    kit.items.push_back(
        {bench::wanted(newDesign(style, bench::wanted(parseProduct("box:60x40x20mm")),
                                 cards().front(), Ease::Easy, ToolGrid::sixteenthInch())),
         1});
  return kit;
}

KitPlan planned(const ClassKit& kit) {
  return bench::wanted(planKit(bench::wanted(buildKit(kit))));
}

void buildKitOfSix(benchmark::State& state) {
  const ClassKit kit = kitFor(40);
  for ([[maybe_unused]] auto _ : state)
    bench::wanted(bench::wanted(buildKit(kit)).items.size() == 6, "not every design is built");
}
BENCHMARK(buildKitOfSix)->Unit(benchmark::kMillisecond);

/// What saving takes: the plan is there.
void pagesOfAPlanFor40(benchmark::State& state) {
  const KitPlan plan = withFindings(planned(kitFor(40)));
  const Paper letter = bench::wanted(findPaper("letter"));
  for ([[maybe_unused]] auto _ : state)
    bench::wanted(!kitPages(plan, Unit::Inch, letter).empty(), "a plan without pages");
}
BENCHMARK(pagesOfAPlanFor40)->Unit(benchmark::kMillisecond);

void planKitFor40(benchmark::State& state) {
  const ClassKit kit = kitFor(40);
  for ([[maybe_unused]] auto _ : state)
    bench::wanted(planned(kit).sheets > 0, "a plan without sheets");
}
BENCHMARK(planKitFor40)->Unit(benchmark::kMillisecond);

void planAndPagesFor40(benchmark::State& state) {
  const ClassKit kit = kitFor(40);
  for ([[maybe_unused]] auto _ : state) {
    const auto pages =
        kitPages(withFindings(planned(kit)), Unit::Inch, bench::wanted(findPaper("letter")));
    bench::wanted(!pages.empty(), "a plan without pages");
  }
}
BENCHMARK(planAndPagesFor40)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
