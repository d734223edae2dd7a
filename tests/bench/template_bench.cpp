#include <QBuffer>
#include <QDateTime>
#include <QFont>
#include <QPageSize>
#include <QPainterPath>
#include <QPdfWriter>
#include <algorithm>
#include <ctime>

#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "bridge/label_text.h"
#include "bridge/paint_drawing.h"
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

/// A box whose parts take two sheets of A4.
BuiltDesign twoSheets() {
  Design design = bench::wanted(
      newDesign("two-piece-box", {}, cards().front(), Ease::Easy, ToolGrid::millimetre()));
  design.parameters.set("length", Length::mm(120));
  design.parameters.set("width", Length::mm(100));
  return bench::wanted(build(design));
}

/// Strokes, fills and words of a page, one after the other, as any program would draw them.
void drawBarely(QPainter& painter, const Drawing& page, const Wording& wording) {
  const auto place = [&page](Point p) { return QPointF(p.x, page.height - p.y); };
  for (const PathItem& item : page.paths) {
    QPainterPath path;
    for (const Polygon& ring : item.rings) {
      path.moveTo(place(ring.front()));
      for (const Point& p : ring) path.lineTo(place(p));
      if (item.closed) path.closeSubpath();
    }
    if (item.filled)
      painter.fillPath(path, toColor(fillColour(item)));
    else
      painter.strokePath(path, rolePen(item.like.value_or(item.role)));
  }
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(64);
  for (const TextItem& item : page.texts) {
    painter.save();
    font.setBold(item.bold);
    painter.setFont(font);
    painter.translate(place(item.at));
    painter.scale(item.height / 64, item.height / 64);
    painter.drawText(QPointF(), QString::fromStdString(wording(item.label)));
    painter.restore();
  }
}

QByteArray bareWriter(const std::vector<Drawing>& pages, const Wording& wording) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(1200);
  writer.setPageSize(QPageSize(QSizeF(pages[0].width, pages[0].height), QPageSize::Millimeter));
  writer.setPageMargins({});
  QPainter painter(&writer);
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (i > 0) writer.newPage();
    painter.save();
    painter.scale(1200 / 25.4, 1200 / 25.4);
    drawBarely(painter, pages[i], wording);
    painter.restore();
  }
  painter.end();
  return bytes;
}

/// Milliseconds of this process alone, whatever else the machine does.
double processorTime() { return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

/// The template of a design on two sheets; `ratio` is its time by that of a bare QPdfWriter that
/// draws the same, in the same run; `pages` and `bare` are milliseconds of the processor.
void templateOnTwoSheets(benchmark::State& state) {
  const BuiltDesign built = twoSheets();
  TemplateOptions options;
  options.setup.paper = bench::wanted(findPaper("a4"));
  const Wording wording = wordingIn(options.unit);
  const std::vector<Drawing> drawn = bench::wanted(templatePages(built, options));
  bench::wanted(drawn.size() == 2, "a template that is not on two sheets");
  double laid = 0;
  double ours = 0;
  double bare = 0;
  for ([[maybe_unused]] auto _ : state) {
    const double start = processorTime();
    const auto pages = bench::wanted(templatePages(built, options));
    laid += processorTime() - start;
    benchmark::DoNotOptimize(bench::wanted(
        renderPdf(pages, wording, {QStringLiteral("box"), QDateTime(), PdfKind::Template})));
    ours += processorTime() - start;
    state.PauseTiming();
    const double again = processorTime();
    benchmark::DoNotOptimize(bareWriter(drawn, wording));
    bare += processorTime() - again;
    state.ResumeTiming();
  }
  const auto rounds = static_cast<double>(state.iterations());
  state.counters["pages"] = laid / rounds;
  state.counters["bare"] = bare / rounds;
  state.counters["ratio"] = ours / bare;
}
BENCHMARK(templateOnTwoSheets)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
