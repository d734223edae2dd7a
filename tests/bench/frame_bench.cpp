#include <string>

#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "document/build.h"
#include "folding/surfaces/scene.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

/// One frame of the preview, half folded: pose, hidden surfaces, visible edges.
void frame(benchmark::State& state, const Style& style) {
  const Design blank;
  const auto built = bench::wanted(
      build(bench::wanted(newDesign(style.id, {}, blank.card, blank.ease, blank.grid))));
  const Net& net = built.pieces.front().net;
  for ([[maybe_unused]] auto _ : state) {
    auto picture = drawFolded(net, pose(net, 0.6), View(), {0, 0, 1});
    bench::wanted(!picture.facets.empty(), "an empty picture");
    benchmark::DoNotOptimize(picture);
  }
}

const bool kFramesRegistered = [] {
  for (const Style& style : styles()) {
    benchmark::RegisterBenchmark(("frame/" + std::string(style.id)).c_str(), frame, style)
        ->Unit(benchmark::kMillisecond);
  }
  return true;
}();

}  // namespace
}  // namespace creasewright
