#include <algorithm>

#include "extras/kinds.h"
#include "folding/surfaces/scene.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

/// The share of a ribbon's way across the top, `along` an axis of the box, that lies on card: seen
/// from above, the outside of the card is there.
double shareOnTop(const FoldPicture& fromAbove, const Camera& eye, const OutsideBox& box,
                  std::size_t along) {
  constexpr int kPlaces = 20;
  const double sign = dot(box.axes[2], box.up) < 0 ? -1 : 1;
  const Point3 top = box.centre + box.axes[2] * (sign * box.sizes[2] / 2);
  int covered = 0;
  for (int i = 0; i < kPlaces; ++i) {
    const double share = (i + 0.5) / kPlaces - 0.5;
    const Point at = eye.project(top + box.axes.at(along) * (share * box.sizes.at(along)));
    const auto seen = std::find_if(
        fromAbove.facets.rbegin(), fromAbove.facets.rend(),
        [&](const Facet& facet) { return locate(at, facet.outline) != Side::Outside; });
    covered += seen != fromAbove.facets.rend() && seen->face == Face::Outside;
  }
  return static_cast<double>(covered) / kPlaces;
}

/// A ribbon lies on a band or sleeve, on a lid, or on a box that is closed; over an open one it
/// would run through the air.
bool liesOnTop(const Extra& ribbon, const Host& host, const OutsideBox& box) {
  constexpr double kLeast = 0.6;
  const auto isRibbon = [&](const WrapRound& wrap) { return wrap.kind == ribbon.kind; };
  if (host.pieces.size() > 1 || !std::ranges::all_of(host.wraps, isRibbon)) return true;
  const View above{Angle(), Angle::degrees(89.9)};
  const Camera eye = camera(above, box.up);
  const HostPiece& only = host.pieces.front();
  Net whole = only.part->net;
  for (Panel& panel : whole.panels) panel.openings.clear();  // it lies across a window
  const FoldPicture picture = drawFolded(whole, *only.folded, above, box.up);
  return shareOnTop(picture, eye, box, 1) >= kLeast &&
         (!ribbon.parameters.flag("cross") || shareOnTop(picture, eye, box, 0) >= kLeast);
}

/// Rounded up to the centimetre or half inch.
Result<ExtraParts> buildRibbon(const Extra& extra, const Host& host) {
  const std::optional<OutsideBox> box = outsideOf(host);
  if (!box) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const bool cross = extra.parameters.flag("cross");
  if (!liesOnTop(extra, host, *box))
    return Problem{ProblemCode::ExtraNoPlace, extra.kind, {std::string("open")}};
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
  const std::optional<OutsideBox> box = outsideOf(host);
  if (!box || !liesOnTop(extra, host, *box)) return {};
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
