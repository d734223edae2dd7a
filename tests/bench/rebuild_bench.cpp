#include <string>

#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "document/build.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

/// Parameters to net, pose, score plan and problems: what follows every change of a number.
void rebuild(benchmark::State& state, const Style& style) {
  const Product product{ProductShape::Box, Length::mm(89), Length::mm(64), Length::mm(25)};
  const Design blank;
  const auto design =
      bench::wanted(newDesign(style.id, product, blank.card, blank.ease, blank.grid));
  for ([[maybe_unused]] auto _ : state) {
    const auto built = bench::wanted(build(design));
    bench::wanted(!built.pieces.empty(), "a design without pieces");
  }
}

const bool kRebuildsRegistered = [] {
  for (const Style& style : styles()) {
    benchmark::RegisterBenchmark(("rebuild/" + std::string(style.id)).c_str(), rebuild, style)
        ->Unit(benchmark::kMillisecond);
  }
  return true;
}();

}  // namespace
}  // namespace creasewright
