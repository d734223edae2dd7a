#include <benchmark/benchmark.h>
#include <sys/resource.h>

#include "bench/wanted.h"
#include "bridge/label_text.h"
#include "kits/plan_kit.h"
#include "output/pdf_export.h"
#include "papers/guide/write_guide.h"
#include "papers/kit/kit_pages.h"
#include "papers/template/template_print.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

/// Six designs for so many people.
ClassKit kitFor(int takers) {
  ClassKit kit;
  kit.takers = takers;
  kit.stock = {{"12x12", Length::inches(12), Length::inches(12)},
               {"tabloid", Length::inches(11), Length::inches(17)},
               {"20 x 26 in", Length::inches(20), Length::inches(26)}};
  for (const char* style : {"two-piece-box", "belly-band", "pillow-box", "envelope",
                            "straight-tuck-box", "crossed-seam-pouch"})
    kit.items.push_back(
        {bench::wanted(newDesign(style, bench::wanted(parseProduct("box:60x40x20mm")),
                                 cards().front(), Ease::Easy, ToolGrid::sixteenthInch())),
         1});
  return kit;
}

KitPlan planned(const ClassKit& kit) {
  return bench::wanted(planKit(bench::wanted(buildKit(kit))));
}

void buildKitOfSix(benchmark::State& state) {
  const ClassKit kit = kitFor(40);
  for ([[maybe_unused]] auto _ : state)
    bench::wanted(bench::wanted(buildKit(kit)).items.size() == 6, "not every design is built");
}
BENCHMARK(buildKitOfSix)->Unit(benchmark::kMillisecond);

/// What saving takes: the plan is there.
void pagesOfAPlanFor40(benchmark::State& state) {
  const KitPlan plan = withFindings(planned(kitFor(40)));
  const Paper letter = bench::wanted(findPaper("letter"));
  for ([[maybe_unused]] auto _ : state)
    bench::wanted(!kitPages(plan, Unit::Inch, letter).empty(), "a plan without pages");
}
BENCHMARK(pagesOfAPlanFor40)->Unit(benchmark::kMillisecond);

/// All papers of a class of 40 as PDF, once they are planned: plan, labels, templates and guides,
/// for either hand, of six designs. `MB` is the most memory that the process has had by then.
void papersOfAClassOf40(benchmark::State& state) {
  const KitPlan plan = withFindings(planned(kitFor(40)));
  TemplateOptions sheets;
  sheets.setup.paper = bench::wanted(findPaper("letter"));
  GuideChoices guide;
  guide.paper = sheets.setup.paper;
  guide.units = GuideUnits::Inch;
  const Wording wording = wordingIn(Unit::Inch);
  std::size_t pages = 0;
  for ([[maybe_unused]] auto _ : state) {
    pages = 0;
    const auto put = [&](const std::vector<Drawing>& drawn, PdfKind kind) {
      pages += drawn.size();
      benchmark::DoNotOptimize(
          bench::wanted(renderPdf(drawn, wording, {QStringLiteral("class"), QDateTime(), kind})));
    };
    put(kitPages(plan, Unit::Inch, guide.paper), PdfKind::Document);
    for (const auto& item : plan.built->items) {
      put(bench::wanted(templatePages(item->design, sheets)), PdfKind::Template);
      for (const GuideKind kind : {GuideKind::Steps, GuideKind::Measures, GuideKind::Talk}) {
        guide.kind = kind;
        guide.form.hand = Hand::Right;
        put(guideSheets(item->design, guide), PdfKind::Document);
      }
      guide.kind = GuideKind::Steps;
      guide.form.hand = Hand::Left;
      put(guideSheets(item->design, guide), PdfKind::Document);
    }
  }
  bench::wanted(pages >= 60, "fewer than 60 pages");
  rusage used{};
  getrusage(RUSAGE_SELF, &used);
  state.counters["pages"] = static_cast<double>(pages);
  state.counters["MB"] = static_cast<double>(used.ru_maxrss) / 1024;
}
BENCHMARK(papersOfAClassOf40)->Unit(benchmark::kMillisecond);

void planKitFor40(benchmark::State& state) {
  const ClassKit kit = kitFor(40);
  for ([[maybe_unused]] auto _ : state)
    bench::wanted(planned(kit).sheets > 0, "a plan without sheets");
}
BENCHMARK(planKitFor40)->Unit(benchmark::kMillisecond);

void planAndPagesFor40(benchmark::State& state) {
  const ClassKit kit = kitFor(40);
  for ([[maybe_unused]] auto _ : state) {
    const auto pages =
        kitPages(withFindings(planned(kit)), Unit::Inch, bench::wanted(findPaper("letter")));
    bench::wanted(!pages.empty(), "a plan without pages");
  }
}
BENCHMARK(planAndPagesFor40)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
