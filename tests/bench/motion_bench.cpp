#include <string>

#include <benchmark/benchmark.h>

#include "document/build.h"
#include "folding/motion_check.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

/// The collision check of the whole way from flat to folded, all pieces of a style.
void foldPath(benchmark::State& state, const Style& style) {
  const Design blank;
  const auto design = newDesign(style.id, {}, blank.card, blank.ease, blank.grid);
  const auto built = build(*design);
  for ([[maybe_unused]] auto _ : state) {
    for (const BuiltPiece& piece : built->pieces) {
      auto problems = checkFoldPath(piece.piece.net, blank.card.caliper.mm());
      benchmark::DoNotOptimize(problems);
    }
  }
}

const bool kRegistered = [] {
  for (const Style& style : styles()) {
    benchmark::RegisterBenchmark(("fold-path/" + std::string(style.id)).c_str(), foldPath, style)
        ->Unit(benchmark::kMillisecond);
  }
  return true;
}();

}  // namespace
}  // namespace creasewright
