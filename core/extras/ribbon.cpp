#include <algorithm>
#include <cmath>
#include <ranges>

#include "extras/flat_piece.h"
#include "extras/kinds.h"
#include "extras/outline_round.h"
#include "extras/ribbon_way.h"
#include "extras/string_round.h"
#include "folding/surfaces/scene.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

/// Where on its way across the top a ribbon lies on card.
class TopOfBox {
 public:
  TopOfBox(const Host& host, const OutsideBox& box) : host_(host), box_(box) {
    if (host.pieces.size() > 1) return;  // a lid or a sleeve
    const View above{Angle(), Angle::degrees(89.9)};
    eye_ = camera(above, box.up);
    const HostPiece& only = host.pieces.front();
    Net whole = only.part->net;
    for (Panel& panel : whole.panels) panel.openings.clear();  // it lies across a window
    picture_ = drawFolded(whole, *only.folded, above, box.up);
  }

  /// The share of a way, round `axis`, that lies on the outside of the card or on a band or sleeve.
  [[nodiscard]] double shareUnder(std::size_t axis) const {
    if (host_.pieces.size() > 1 || axis == 2) return 1;
    constexpr int kPlaces = 20;
    const std::size_t along = 1 - axis;
    const double sign = dot(box_.axes[2], box_.up) < 0 ? -1 : 1;
    const Point3 top = box_.centre + box_.axes[2] * (sign * box_.sizes[2] / 2);
    int covered = 0;
    for (int i = 0; i < kPlaces; ++i) {
      const double off = ((i + 0.5) / kPlaces - 0.5) * box_.sizes.at(along);
      covered += isCard(top + box_.axes.at(along) * off) || isWrapped(axis, along, off);
    }
    return static_cast<double>(covered) / kPlaces;
  }

 private:
  [[nodiscard]] bool isCard(Point3 there) const {
    const Point at = eye_.project(there);
    const auto seen = std::find_if(
        picture_.facets.rbegin(), picture_.facets.rend(),
        [&](const Facet& facet) { return locate(at, facet.outline) != Side::Outside; });
    return seen != picture_.facets.rend() && seen->face == Face::Outside;
  }
  [[nodiscard]] bool isWrapped(std::size_t axis, std::size_t along, double off) const {
    return std::ranges::any_of(
        host_.under,
        [&](const WrapBody& body) {
          return body.axis == axis ||
                 (body.axis == along && std::abs(off) <= body.sizes.at(along) / 2);
        });
  }

  const Host& host_;
  const OutsideBox& box_;
  Camera eye_{};
  FoldPicture picture_;
};

/// The axes of its ways: both level ones, or the one that a band under it goes round, or the
/// short way.
std::vector<std::size_t> axesOf(bool cross, const Host& host) {
  if (cross) return {0, 1};
  if (!host.under.empty()) return {host.under.back().axis};
  return {0};
}

/// A ribbon lies on a band or sleeve, on a lid, or on a box that is closed; over an open one it
/// would run through the air.
std::optional<Problem> airUnder(const Extra& ribbon, bool cross, const Host& host,
                                const OutsideBox& box) {
  constexpr double kLeast = 0.6;
  const TopOfBox top(host, box);
  const std::vector<std::size_t> axes = axesOf(cross, host);
  const auto lies = [&](std::size_t axis) { return top.shareUnder(axis) >= kLeast; };
  const auto held = std::ranges::count_if(axes, lies);
  if (held == std::ssize(axes)) return std::nullopt;
  if (held > 0) return Problem{ProblemCode::ExtraInAir, ribbon.kind, {}};
  return Problem{ProblemCode::ExtraNoPlace, ribbon.kind, {std::string("open")}};
}

/// Once round everything that lies under it.
RibbonWay wayRound(const Host& host, const OutsideBox& box, std::size_t axis, double width) {
  return {axis, outlineRound(host, box, axis, width)};
}

/// How wide a ribbon may be to lie on the box, on all its ways, mm.
double widestOn(const Extra& ribbon, const Host& host, const OutsideBox& box) {
  const std::vector<std::size_t> axes = axesOf(ribbon.parameters.flag("cross"), host);
  return std::ranges::min(axes |
                          std::views::transform([&](auto axis) { return box.sizes.at(axis); }));
}

/// Rounded up to the centimetre or half inch.
Result<ExtraParts> buildRibbon(const Extra& extra, const Host& host) {
  const std::optional<OutsideBox> box = outsideOf(host);
  if (!box) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const bool cross = extra.parameters.flag("cross");
  if (std::optional<Problem> air = airUnder(extra, cross, host, *box)) return *air;
  const Length width = extra.parameters.length("width");
  if (const double most = widestOn(extra, host, *box); width.mm() > most)
    return Problem{ProblemCode::ExtraTooLarge,
                   extra.kind,
                   {width, onGridBelow(most, host.bench.grid), std::string("width")}};
  const Length bow = extra.parameters.length("bow");
  ExtraParts parts;
  RibbonNeed need{width, {}, bow, cross, *box};
  for (const std::size_t axis : axesOf(cross, host))
    need.ways.push_back(wayRound(host, *box, axis, width.mm()));
  need.length = ribbonSteps(host.bench.grid).roundUp(Length::mm(ribbonRound(need.ways)) + bow);
  parts.ribbon = std::move(need);
  return parts;
}

std::vector<WrapRound> ribbonRuns(const Extra& extra, const Host& host) {
  const std::optional<OutsideBox> box = outsideOf(host);
  const bool cross = extra.parameters.flag("cross");
  if (!box || airUnder(extra, cross, host, *box)) return {};
  if (extra.parameters.mm("width") > widestOn(extra, host, *box)) return {};
  std::vector<WrapRound> runs;
  for (const std::size_t axis : axesOf(cross, host))
    runs.push_back({extra.kind, axis, extra.parameters.mm("width")});
  return runs;
}

}  // namespace

Result<RibbonNeed> stringRound(const Extra& hanging, const Host& host) {
  // Baker's twine of 1 to 2 mm (common practice). Once round, and a bow of 2B + 2T + 4w: its loops
  // about 50 mm from tip to tip, ends of about 40 mm (as a tied bow is reckoned in bow.cpp).
  constexpr double kTwine = 2;
  constexpr double kTips = 50;
  constexpr double kEnds = 40;
  const std::optional<OutsideBox> box = outsideOf(host);
  const Problem unhung{ProblemCode::ExtraUnhung, hanging.kind, {}};
  if (!box || airUnder(hanging, false, host, *box)) return unhung;
  const Length bow = Length::mm(2 * kTips + 2 * kEnds + 4 * kTwine);
  RibbonNeed need{Length::mm(kTwine), {}, bow, false, *box};
  for (const std::size_t axis : axesOf(false, host))
    need.ways.push_back(wayRound(host, *box, axis, kTwine));
  need.length = ribbonSteps(host.bench.grid).roundUp(Length::mm(ribbonRound(need.ways)) + bow);
  return need;
}

ExtraKind ribbonExtra() {
  return {
      .id = "ribbon",
      .title = worded("styles", "Ribbon"),
      .summary = worded("styles", "Crosswise or once round, with a bow."),
      .act = ExtraAct::TieRibbon,
      .ofCard = false,
      .carriers = {Carrier::Box, Carrier::Wrap},
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
                            worded("styles",
                                   "Off: once round the short way, or along the band under it."))
                         .on()},
      .build = buildRibbon,
      .runs = ribbonRuns};
}

}  // namespace creasewright
