#include "extras/kinds.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

/// Rounded up to the centimetre or half inch.
Result<ExtraParts> buildRibbon(const Extra& extra, const Host& host) {
  const std::optional<OutsideBox> box = outsideOf(host);
  if (!box) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const bool cross = extra.parameters.flag("cross");
  const bool inches =
      !host.bench.grid.isNone() && Length::inches(1).nm() % host.bench.grid.step().nm() == 0;
  const ToolGrid whole(inches ? Length::inches(1, 2) : mm(10));
  ExtraParts parts;
  parts.ribbon = RibbonNeed{
      extra.parameters.length("width"),
      whole.roundUp(Length::mm(ribbonRound(box->sizes, cross)) + extra.parameters.length("bow")),
      extra.parameters.length("bow"), cross, *box};
  return parts;
}

std::vector<WrapRound> ribbonRuns(const Extra& extra, const Host& host) {
  if (!outsideOf(host)) return {};
  const double width = extra.parameters.mm("width");
  std::vector<WrapRound> runs{{extra.kind, 0, width}};
  if (extra.parameters.flag("cross")) runs.push_back({extra.kind, 1, width});
  return runs;
}

}  // namespace

// Cross wrap 2L + 2W + 4H: two ribbon sellers' worked examples, 11.5 x 5.5 x 4 in give 50 in
// without a bow, 30 x 20 x 10 cm with a bow of 24 cm give 164 cm. Once round by the same geometry.
double ribbonRound(const std::array<double, 3>& sizes, bool cross) {
  const auto [length, width, height] = sizes;
  return cross ? 2 * length + 2 * width + 4 * height : 2 * width + 2 * height;
}

ExtraKind ribbonExtra() {
  return {
      .id = "ribbon",
      .title = worded("styles", "Ribbon"),
      .summary = worded("styles", "Crosswise or once round, with a bow."),
      .act = ExtraAct::TieRibbon,
      .ofCard = false,
      .parameters = {measure("width", worded("styles", "Width"), worded("styles", "Of the ribbon."))
                         .standard(mm(15))
                         .from(mm(3))
                         .to(mm(80)),
                     measure("bow", worded("styles", "Bow"),
                             worded("styles", "Ribbon for the bow and its ends."))
                         .standard(mm(240))
                         .from(Length())
                         .to(kLargestSide),
                     toggle("cross", worded("styles", "Crosswise"),
                            worded("styles", "Off: once round the short way."))
                         .on()},
      .build = buildRibbon,
      .runs = ribbonRuns};
}

}  // namespace creasewright
