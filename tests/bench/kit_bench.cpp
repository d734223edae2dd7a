#include <benchmark/benchmark.h>

#include "kits/kit_pages.h"
#include "kits/plan_kit.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

/// Six designs for so many people.
ClassKit kitFor(int takers) {
  ClassKit kit;
  kit.takers = takers;
  kit.stock = {{"12x12", Length::inches(12), Length::inches(12)},
               {"tabloid", Length::inches(11), Length::inches(17)}};
  for (const char* style : {"two-piece-box", "belly-band", "pillow-box", "envelope",
                            "straight-tuck-box", "crossed-seam-pouch"})
    kit.items.push_back({*newDesign(style, *parseProduct("box:60x40x20mm"), cards().front(),
                                    Ease::Easy, ToolGrid::sixteenthInch()),
                         1});
  return kit;
}

void planKitFor40(benchmark::State& state) {
  const ClassKit kit = kitFor(40);
  for ([[maybe_unused]] auto _ : state) benchmark::DoNotOptimize(planKit(kit));
}
BENCHMARK(planKitFor40)->Unit(benchmark::kMillisecond);

void planAndPagesFor40(benchmark::State& state) {
  const ClassKit kit = kitFor(40);
  for ([[maybe_unused]] auto _ : state) {
    const auto plan = planKit(kit);
    benchmark::DoNotOptimize(
        kitPages(kit, *plan, findingsFor(kit, *plan), Unit::Inch, *findPaper("letter")));
  }
}
BENCHMARK(planAndPagesFor40)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
