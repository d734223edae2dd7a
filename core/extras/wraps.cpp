#include <algorithm>

#include "extras/flat_piece.h"
#include "extras/kinds.h"
#include "fit/blank_on_grid.h"
#include "folding/cavity/outside.h"
#include "folding/surfaces/upright.h"
#include "styles/belly_band.h"
#include "styles/open_sleeve.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

/// A tube lies along the longest axis of the box; its front is the top of a lying box, and of a
/// standing one the side that the eye sees most of.
struct Girth {
  std::size_t along = 0;
  std::size_t across = 1;  ///< from left to right on the front
  std::size_t deep = 2;    ///< from the front to the back
  Point3 out;              ///< out of the front
};

Girth girthOf(const OutsideBox& box) {
  Girth girth;
  girth.along = static_cast<std::size_t>(std::ranges::max_element(box.sizes) - box.sizes.begin());
  const std::size_t a = (girth.along + 1) % 3;
  const std::size_t b = (girth.along + 2) % 3;
  const bool standing = std::abs(dot(box.axes.at(girth.along), box.up)) > 0.9;
  const Point3 towards =
      standing ? camera(frontView(standardView(), box.up), box.up).towardsEye : box.up;
  const bool frontIsA =
      std::abs(dot(box.axes.at(a), towards)) > std::abs(dot(box.axes.at(b), towards));
  girth.deep = frontIsA ? a : b;
  girth.across = frontIsA ? b : a;
  const Point3 axis = box.axes.at(girth.deep);
  girth.out = dot(axis, towards) >= 0 ? axis : axis * -1;
  return girth;
}

/// mm2 of the faces that lie in the outer side of the box to which `out` points.
double coverOn(const Host& host, const OutsideBox& box, Point3 out, double reach) {
  double area = 0;
  const HostPiece& first = host.pieces.front();
  for (std::size_t i = 0; i < first.part->net.panels.size(); ++i) {
    const Transform& place = (*first.folded)[i];
    if (dot(place.normal(), out) > -0.999) continue;
    const double off =
        dot(place.apply(first.part->net.panels[i].outline.front()) - box.centre, out);
    if (off > reach - 2) area += std::abs(signedArea(first.part->net.panels[i].outline));
  }
  return area;
}

/// A band holds on two upright sides and lies on the front or the back, each at least a third of
/// card; an open tray has no front.
bool holdsRound(const Host& host, const OutsideBox& box, const Girth& girth) {
  constexpr double kShare = 1.0 / 3;
  if (host.pieces.size() > 1) return true;  // a lid or a sleeve has them
  const auto covered = [&](std::size_t axis, std::size_t other, double sign) {
    const double whole = box.sizes.at(girth.along) * box.sizes.at(other);
    const double reach = box.sizes.at(axis) / 2 - host.onFaces.mm();
    return coverOn(host, box, box.axes.at(axis) * sign, reach) >= kShare * whole;
  };
  const std::size_t across = girth.across;
  const std::size_t deep = girth.deep;
  return covered(across, deep, 1) && covered(across, deep, -1) &&
         (covered(deep, across, 1) || covered(deep, across, -1));
}

/// The tube's own middle and axes brought to those of the box. Its front is panel 0, whose drawn
/// face looks into the tube; the tube's length runs along y.
Transform placeRound(const OutsideBox& box, const Girth& girth, Point3 middle) {
  const Point3 z = girth.out * -1;
  const Point3 y = box.axes.at(girth.along);
  const Transform turn = Transform::frame({}, cross(y, z), y);
  return Transform::translation(box.centre - turn.apply(middle)).after(turn);
}

struct Wrap {
  Style style;
  Parameters parameters;
  std::string name;
  double width = 0;   ///< mm along the box
  Length depth = {};  ///< from front to back
};

/// The box with all that lies under a wrap of a width.
OutsideBox withAllUnder(const Host& host, const OutsideBox& box, const Girth& girth, double width) {
  const OutsideBox wrapped = overUnder(host, overRaised(host, box, girth.along, width));
  return overRaised(host, wrapped, girth.along, width, true);
}

Result<ExtraParts> buildWrap(const Wrap& wrap, const Extra& extra, const Host& host,
                             const OutsideBox& box, const Girth& girth) {
  // It comes from an end of the box: what it passes counts too.
  for (const Raised* raised : raisedUnder(host, box, girth.along, 2 * box.sizes.at(girth.along))) {
    if (raised->foam) return Problem{ProblemCode::ExtraOverFoam, extra.kind, {raised->kind}};
    if (raised->bow) return Problem{ProblemCode::ExtraOverBow, extra.kind, {raised->kind}};
  }
  const Workbench bench = host.benchOf(extra);
  if (const Problems limits = checkLimits(wrap.style, wrap.parameters, bench); !limits.empty())
    return limits.front();
  std::vector<Piece> pieces =
      wrap.style.build(blanksOnGrid(wrap.style, wrap.parameters, bench), bench);
  Piece& piece = pieces.front();
  piece.name = wrap.name;
  const Bounds front = bounds(piece.net.panels.front().outline);
  const Point middle = (front.low + front.high) / 2;
  WrapBody body{girth.along, {}};
  const Pose folded = pose(piece.net, 1.0);
  const CavitySize out = measureOutside(piece.net, folded, *piece.cavity, extra.card.caliper.mm());
  body.sizes.at(girth.along) = out.length;
  body.sizes.at(girth.across) = out.width;
  body.sizes.at(girth.deep) = out.height;
  ExtraPiece built{std::move(piece), Placing::Round};
  built.around = placeRound(box, girth, {middle.x, middle.y, wrap.depth.mm() / 2});
  ExtraParts parts;
  parts.pieces.push_back(std::move(built));
  parts.body = body;
  return parts;
}

/// The needs of a style round the box, on the grid, and the rest inside their limits.
Parameters fitRound(const Style& style, const Extra& extra, const Host& host, const OutsideBox& box,
                    const Girth& girth, double along) {
  const Product outside{ProductShape::Box, Length::mm(along),
                        Length::mm(box.sizes.at(girth.across)),
                        Length::mm(box.sizes.at(girth.deep))};
  return fit(style, outside, host.ease, host.benchOf(extra)).parameters;
}

/// Along the box: all of it for a full band, a third of it where no width is chosen.
Length bandWidth(const Extra& extra, const Host& host, double side) {
  if (extra.parameters.flag("full")) return onGridBelow(side, host.bench.grid);
  const Length chosen = extra.parameters.length("width");
  return chosen > Length() ? chosen : std::max(onGridBelow(side / 3, host.bench.grid), mm(12.7));
}

Result<ExtraParts> buildBand(const Extra& extra, const Host& host) {
  const std::optional<OutsideBox> box = outsideOf(host);
  if (!box) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const Girth girth = girthOf(*box);
  if (!holdsRound(host, *box, girth)) return Problem{ProblemCode::ExtraNotRound, extra.kind, {}};
  const double side = box->sizes.at(girth.along);
  const Length width = bandWidth(extra, host, side);
  if (width.mm() > side)
    return Problem{ProblemCode::ExtraTooLarge,
                   extra.kind,
                   {width, onGridBelow(side, host.bench.grid), std::string("width")}};
  Wrap wrap{bellyBand(), {}, "band", width.mm()};
  const OutsideBox around = withAllUnder(host, *box, girth, width.mm());
  wrap.parameters = fitRound(wrap.style, extra, host, around, girth, width.mm());
  if (const Length ease = extra.parameters.length("ease"); ease > Length()) {
    // Ease and card are added to the box as it is; the sum goes to the grid.
    const ToolGrid grid = host.bench.grid;
    const Length across = Length::mm(around.sizes.at(girth.across));
    const Length deep = Length::mm(around.sizes.at(girth.deep));
    const Length card = extra.card.caliper;
    wrap.parameters.set(
        "ease-width", grid.roundUp(across + ease + card) - wrap.parameters.length("around-width"));
    wrap.parameters.set("around-depth", grid.roundUp(deep + ease + card * 2));
  }
  wrap.depth = wrap.parameters.length("around-depth");
  wrap.parameters.set("around-length", width);
  wrap.parameters.set("ease-length", Length());
  // The seam lies near the fold at the back, where it shows least; 10 mm are left to hold.
  const Length overlap = extra.parameters.length("overlap");
  const Length across =
      wrap.parameters.length("around-width") + wrap.parameters.length("ease-width");
  const Length most = onGridBelow((across - mm(10)).mm(), host.bench.grid);
  wrap.parameters.set("overlap", overlap);
  wrap.parameters.set("wide-part", std::max(most, overlap));
  Result<ExtraParts> parts = buildWrap(wrap, extra, host, around, girth);
  if (!parts && parts.problem().where == "around-length") {
    // What the wrap calls the box's length is the band's own width.
    Problem ofWidth = parts.problem();
    ofWidth.where = "width";
    ofWidth.values.resize(2);
    return ofWidth;
  }
  const Length unused = extra.parameters.length("width");
  if (!parts || !extra.parameters.flag("full") || unused == Length()) return parts;
  ExtraParts told = std::move(parts).value();
  told.warnings.push_back({ProblemCode::ExtraWidthUnused, extra.kind, {unused}, Severity::Warning});
  return told;
}

Result<ExtraParts> buildSleeve(const Extra& extra, const Host& host) {
  const std::optional<OutsideBox> box = outsideOf(host);
  if (!box) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const Girth girth = girthOf(*box);
  if (!holdsRound(host, *box, girth)) return Problem{ProblemCode::ExtraNotRound, extra.kind, {}};
  Wrap wrap{openSleeve(), {}, "sleeve", box->sizes.at(girth.along)};
  const OutsideBox around = withAllUnder(host, *box, girth, wrap.width);
  wrap.parameters = fitRound(wrap.style, extra, host, around, girth, box->sizes.at(girth.along));
  wrap.depth = wrap.parameters.length("depth");
  wrap.parameters.set("seam", extra.parameters.length("seam"));
  wrap.parameters.setCount("thumb-notch", extra.parameters.raw("thumb-notch"));
  return buildWrap(wrap, extra, host, around, girth);
}

/// Once round the box, over the band's width or its whole length; none where it would not hold or
/// is longer.
std::vector<WrapRound> runsOver(const Extra& extra, const Host& host, bool wholeLength) {
  const std::optional<OutsideBox> box = outsideOf(host);
  if (!box) return {};
  const Girth girth = girthOf(*box);
  if (!holdsRound(host, *box, girth)) return {};
  const double side = box->sizes.at(girth.along);
  const double width = wholeLength ? side : bandWidth(extra, host, side).mm();
  if (width > side) return {};
  return {{extra.kind, girth.along, width}};
}

std::vector<WrapRound> bandRuns(const Extra& extra, const Host& host) {
  return runsOver(extra, host, false);
}

std::vector<WrapRound> sleeveRuns(const Extra& extra, const Host& host) {
  return runsOver(extra, host, true);
}

}  // namespace

ExtraKind bandExtra() {
  return {.id = "belly-band",
          .title = worded("styles", "Belly band"),
          .summary = worded("styles", "Round the box, its seam near a fold at the back."),
          .act = ExtraAct::SlideBandOn,
          .hasFaces = true,
          .carriers = {Carrier::Box, Carrier::Wrap},
          .parameters = {measure("width", worded("styles", "Band width"),
                                 worded("styles", "Along the box; 0 takes a third of the box."))
                             .from(Length())
                             .to(kLargestSide),
                         toggle("full", worded("styles", "Full band"),
                                worded("styles", "As wide as the box is long.")),
                         measure("ease", worded("styles", "Ease for sliding"),
                                 worded("styles", "Each way round the box; 0 takes the design's."))
                             .from(Length())
                             .to(mm(10)),
                         measure("overlap", worded("styles", "Overlap"),
                                 worded("styles", "Glued lap at the back."))
                             .standard(Length::inches(3, 8))
                             .from(smallestFlap())
                             .to(mm(50))},
          .build = buildBand,
          .runs = bandRuns};
}

ExtraKind sleeveExtra() {
  return {
      .id = "sleeve",
      .title = worded("styles", "Sleeve"),
      .summary = worded("styles", "An open tube as long as the box."),
      .act = ExtraAct::SlideIntoSleeve,
      .hasFaces = true,
      .carriers = {Carrier::Box, Carrier::Wrap},
      .parameters = {measure("seam", worded("styles", "Glue seam"),
                             worded("styles", "Glued inside the front."))
                         .standard(Length::inches(3, 8))
                         .from(smallestFlap())
                         .to(mm(50)),
                     toggle("thumb-notch", worded("styles", "Thumb notches"),
                            worded("styles", "Half-round notches in front and back at one end."))
                         .on()},
      .build = buildSleeve,
      .runs = sleeveRuns};
}

}  // namespace creasewright
