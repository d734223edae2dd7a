#include "styles/belly_band.h"

#include <algorithm>

#include "net/net_builder.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

enum Stage { WrapNarrow = 1, WrapWide };

Shape front(double width, double length) {
  Shape shape = rectangle(width, length);
  shape.edges = {"bottom", "right", "top", "left"};
  return shape;
}

/// Front, side, back in two overlapping parts, side. The lap is the end of the narrow back that
/// goes under the wide one; no score divides them.
std::vector<Piece> buildBand(const Parameters& p, const Workbench&) {
  const double width = p.mm("around-width") + p.mm("ease-width");
  const double length = p.mm("around-length") + p.mm("ease-length");
  const double depth = p.mm("around-depth");
  const double wide = p.mm("wide-part");
  const double lap = p.mm("overlap");

  NetBuilder net({"wrap-narrow-part", "wrap-wide-part"});
  net.root("front", front(width, length))
      .hinge({"front", "left"}, "front/left/side", rectangle(length, depth), {90, WrapWide})
      .hinge({"front/left/side", "outer"}, "front/left/back", rectangle(length, wide),
             {90, WrapWide})
      .hinge({"front", "right"}, "front/right/side", rectangle(length, depth), {90, WrapNarrow})
      .hinge({"front/right/side", "outer"}, "front/right/back", rectangle(length, width - wide),
             {90, WrapNarrow})
      .hinge({"front/right/back", "outer"}, "front/right/back/lap", rectangle(length, lap),
             {0, WrapNarrow, CreaseKind::Flat})
      .mate("front/right/back/lap", "front/left/back", Face::Inside, Method::Glue, false)
      .showing(
          {"front", "front/left/side", "front/left/back", "front/right/side", "front/right/back"});

  Cavity cavity{"front", {width / 2, length / 2, depth / 2}, {1, 0, 2}};
  cavity.low.y = 0;
  cavity.high.y = length;
  return {{"band", net.take(), cavity}};
}

/// What a box on the grid still lacks of box and ease together: the sum is rounded, once.
Length easeOnGrid(Length box, Length ease, ToolGrid grid) {
  return std::max(Length(), grid.roundUp(box + ease) - grid.roundUp(box));
}

/// The wrapped box keeps its own measures; ease and one caliper on the width go into the ease. The
/// depth carries two calipers: half a card on either side and the lap.
std::vector<Need> bandNeeds(const Room& room, const Parameters&, const Workbench& bench) {
  const ToolGrid grid = bench.grid;
  return {
      {"around-length", Axis::Length, room.product[0]},
      {"ease-length", Axis::Length, easeOnGrid(room.product[0], room.ease[0], grid)},
      {"around-width", Axis::Width, room.product[1]},
      {"ease-width", Axis::Width, easeOnGrid(room.product[1], room.ease[1] + bench.caliper, grid)},
      {"around-depth", Axis::Height, room.product[2] + bench.caliper * 2}};
}

std::int64_t widestPart(const Parameters& p, const Workbench&) {
  const Length smallestRest = mm(3);
  return (p.length("around-width") + p.length("ease-width") - smallestRest).nm();
}

}  // namespace

Style bellyBand() {
  const Length none;
  const Length smallest = mm(12);
  const Length smallestDepth = mm(3);
  const Length mostEase = mm(20);
  return {
      .id = "belly-band",
      .title = worded("styles", "Belly band"),
      .summary = worded("styles", "A band that slides round a box and closes at the back."),
      .words = {.stages = {{"wrap-narrow-part", worded("stages", "wrap the narrow part round"),
                            worded("stages", "Bring the narrow part round.")},
                           {"wrap-wide-part", worded("stages", "wrap and glue"),
                            worded("stages",
                                   "Bring the wide part round over it and press the seam.")}},
                .panels = {{"side", worded("panels", "side")}, {"lap", worded("panels", "lap")}},
                .pieces = {{"band", worded("pieces", "band")}}},
      .parameters = {measure("around-length", worded("styles", "Box length"),
                             worded("styles", "Outside length of the box, along the band's edges."))
                         .standard(Length::inches(21, 4))
                         .from(smallest)
                         .to(kLargestSide),
                     measure("around-width", worded("styles", "Box width"),
                             worded("styles", "Outside width of the box."))
                         .standard(Length::inches(9, 4))
                         .from(smallest)
                         .to(kLargestSide),
                     measure("around-depth", worded("styles", "Box depth"),
                             worded("styles", "Outside depth of the box."))
                         .standard(Length::inches(1))
                         .from(smallestDepth)
                         .to(mm(500)),
                     measure("ease-width", worded("styles", "Ease on the width"),
                             worded("styles", "Room to slide, on the width."))
                         .standard(Length::inches(1, 16))
                         .from(none)
                         .to(mostEase),
                     measure("ease-length", worded("styles", "Ease on the length"),
                             worded("styles", "How much longer than the box the band is."))
                         .standard(Length::inches(1, 16))
                         .from(none)
                         .to(mostEase),
                     measure(
                         "overlap", worded("styles", "Overlap"),
                         worded("styles", "Glued lap at the back, narrower than the wide part."))
                         .standard(Length::inches(3, 8))
                         .from(smallestFlap())
                         .to(least(otherPlus("wide-part"), widestPart))
                         .givesWay(),
                     measure(
                         "wide-part", worded("styles", "Wide part"),
                         worded("styles", "The part of the back that lies on top, lap counted."))
                         .standard(Length::inches(3, 2))
                         .from(otherPlus("overlap"))
                         .to(widestPart)},
      .easeOn = {true, true, false},
      .needs = bandNeeds,
      .build = buildBand,
  };
}

}  // namespace creasewright
