#include <string>

#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "document/build.h"
#include "folding/motion/motion_check.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

/// The collision check of the whole way from flat to folded, all pieces of a style.
void foldPath(benchmark::State& state, const Style& style) {
  const Design blank;
  const auto built = bench::wanted(
      build(bench::wanted(newDesign(style.id, {}, blank.card, blank.ease, blank.grid))));
  for ([[maybe_unused]] auto _ : state) {
    for (const BuiltPiece& piece : built.pieces) {
      auto problems = checkFoldPath(piece.net, blank.card.caliper.mm());
      bench::wanted(problems.empty(), "a fold path that does not hold");
    }
  }
}

const bool kMotionsRegistered = [] {
  for (const Style& style : styles()) {
    benchmark::RegisterBenchmark(("fold-path/" + std::string(style.id)).c_str(), foldPath, style)
        ->Unit(benchmark::kMillisecond);
  }
  return true;
}();

}  // namespace
}  // namespace creasewright
