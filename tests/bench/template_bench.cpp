#include <QDateTime>

#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "bridge/label_text.h"
#include "document/build.h"
#include "output/pdf_export.h"
#include "papers/template/template_print.h"

namespace creasewright {
namespace {

/// The sample tray's template as a PDF for A4, from the built design to the bytes.
void templatePdf(benchmark::State& state) {
  const Design blank;
  const auto built = bench::wanted(
      build(bench::wanted(newDesign("framed-tray", {}, blank.card, blank.ease, blank.grid))));
  TemplateOptions options;
  options.setup.paper = bench::wanted(findPaper("a4"));
  const Wording wording = wordingIn(options.unit);
  for ([[maybe_unused]] auto _ : state) {
    const auto pages = bench::wanted(templatePages(built, options));
    benchmark::DoNotOptimize(
        bench::wanted(renderPdf(pages, wording, {QStringLiteral("tray"), QDateTime()})));
  }
}
BENCHMARK(templatePdf)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
