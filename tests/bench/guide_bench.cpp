#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "bridge/label_text.h"
#include "guide/make_guide.h"
#include "output/pdf_export.h"
#include "papers/guide/guide_html.h"
#include "papers/guide/guide_pages.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

BuiltDesign standard(std::string_view style) {
  return bench::wanted(build(bench::wanted(
      newDesign(style, std::nullopt, cards().front(), Ease::Easy, ToolGrid::sixteenthInch()))));
}

/// Plans and steps of every style, one after the other.
void guideStructureOfAllStyles(benchmark::State& state) {
  std::vector<BuiltDesign> all;
  for (const Style& style : styles()) all.push_back(standard(style.id));
  for ([[maybe_unused]] auto _ : state)
    for (const BuiltDesign& built : all)
      bench::wanted(!makeGuide(built).steps.empty(), "a guide without steps");
}
BENCHMARK(guideStructureOfAllStyles)->Unit(benchmark::kMillisecond);

void guideHtmlOf(benchmark::State& state, const char* style) {
  const BuiltDesign built = standard(style);
  for ([[maybe_unused]] auto _ : state)
    bench::wanted(guideHtml(built, GuideUnits::Both, QStringLiteral("en")).contains("</html>"),
                  "half a page");
}
BENCHMARK_CAPTURE(guideHtmlOf, framedTray, "framed-tray")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(guideHtmlOf, pillowBox, "pillow-box")->Unit(benchmark::kMillisecond);

void guidePdfOf(benchmark::State& state, const char* style) {
  const BuiltDesign built = standard(style);
  for ([[maybe_unused]] auto _ : state)
    benchmark::DoNotOptimize(
        bench::wanted(renderPdf(guidePages(built, GuideUnits::Both, bench::wanted(findPaper("a4"))),
                                wordingIn(Unit::Millimetre), {})));
}
BENCHMARK_CAPTURE(guidePdfOf, framedTray, "framed-tray")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(guidePdfOf, pillowBox, "pillow-box")->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
