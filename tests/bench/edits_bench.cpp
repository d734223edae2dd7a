#include <benchmark/benchmark.h>

#include "bench/edited_design.h"
#include "bench/wanted.h"
#include "document/build.h"

namespace creasewright {
namespace {

/// The same without the changes, to compare.
void rebuildLargest(benchmark::State& state) {
  Design design = bench::editedDesign();
  if (state.range(0) == 0) design.edits.clear();
  for ([[maybe_unused]] auto _ : state) {
    const BuiltDesign built = bench::wanted(build(design));
    bench::wanted(built.brokenEdits.empty(), "a change that is not made");
  }
  state.SetLabel(design.styleId);
}
BENCHMARK(rebuildLargest)->Arg(0)->Arg(bench::kEdits)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
