#include <QDateTime>

#include <benchmark/benchmark.h>

#include "bridge/label_text.h"
#include "document/build.h"
#include "output/pdf_export.h"
#include "printing/template_print.h"

namespace creasewright {
namespace {

/// The sample tray's template as a PDF for A4, from the built design to the bytes.
void templatePdf(benchmark::State& state) {
  const Design blank;
  const auto design = newDesign("framed-tray", {}, blank.card, blank.ease, blank.grid);
  const auto built = build(*design);
  const auto paper = findPaper("a4");
  TemplateOptions options;
  options.setup.paper = *paper;
  const Wording wording = wordingIn(options.unit);
  for ([[maybe_unused]] auto _ : state) {
    const auto pages = templatePages(*built, options);
    auto pdf = renderPdf(*pages, wording, {QStringLiteral("tray"), QDateTime()});
    benchmark::DoNotOptimize(pdf);
  }
}
BENCHMARK(templatePdf)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
