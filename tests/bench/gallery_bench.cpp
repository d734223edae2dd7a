#include <array>

#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "document/suggest.h"
#include "gallery/gallery_model.h"
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

/// All styles built, folded, checked and ranked for one product. On all cores, so the clock counts.
void suggestAll(benchmark::State& state) {
  for ([[maybe_unused]] auto _ : state) {
    auto all = suggestForSoap();
    benchmark::DoNotOptimize(all);
  }
}
BENCHMARK(suggestAll)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime()->UseRealTime();

/// The same with both gallery pictures of every style.
void galleryOfAllStyles(benchmark::State& state) {
  for ([[maybe_unused]] auto _ : state) {
    GalleryModel model;
    model.show(suggestForSoap(), "framed-tray", Unit::Millimetre, 1);
    for (int row = 0; row < model.rowCount(); ++row) {
      for (const int role : {GalleryModel::FoldedRole, GalleryModel::NetRole}) {
        const auto picture = model.data(model.index(row), role).value<QImage>();
        bench::wanted(!picture.isNull(), "a picture that is none");
      }
    }
  }
}
BENCHMARK(galleryOfAllStyles)
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();

}  // namespace
}  // namespace creasewright
