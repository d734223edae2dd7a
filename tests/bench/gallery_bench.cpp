#include <array>

#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "bridge/design_pixmap.h"
#include "document/suggest.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

std::vector<Suggestion> suggestForSoap() {
  const Product soap{ProductShape::Box, Length::mm(89), Length::mm(64), Length::mm(25)};
  const Design blank;
  const std::array stock{bench::wanted(findPaper("letter")), bench::wanted(findPaper("12x12"))};
  auto all = suggest(soap, blank.card, blank.ease, blank.grid, stock);
  bench::wanted(all.size() == styles().size() + 1, "styles missing among the suggestions");
  return all;
}

/// All styles built, folded, checked and ranked for one product.
void suggestAll(benchmark::State& state) {
  for ([[maybe_unused]] auto _ : state) {
    auto all = suggestForSoap();
    benchmark::DoNotOptimize(all);
  }
}
BENCHMARK(suggestAll)->Unit(benchmark::kMillisecond);

/// The same with both gallery pictures of every style.
void galleryOfAllStyles(benchmark::State& state) {
  for ([[maybe_unused]] auto _ : state) {
    for (const Suggestion& suggestion : suggestForSoap()) {
      const QPixmap folded = designPixmap(suggestion.built, true, {188, 132}, 1);
      const QPixmap flat = designPixmap(suggestion.built, false, {64, 56}, 1);
      bench::wanted(!folded.isNull() && !flat.isNull(), "a picture that is none");
    }
  }
}
BENCHMARK(galleryOfAllStyles)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
