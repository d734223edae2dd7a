#include "styles/blank_sheet.h"

#include "net/net_builder.h"
#include "styles/parameter_rows.h"
#include "styles/parts/needs.h"

namespace creasewright {
namespace {

/// Until walls stand the product's space ends where they would.
std::vector<Piece> buildSheet(const Parameters& p, const Workbench&) {
  const double length = p.mm("length");
  const double width = p.mm("width");
  const double height = p.mm("height");
  Shape base = rectangle(length, width);
  base.edges = {"front", "right", "back", "left"};
  NetBuilder net({});
  net.root("base", base).showing({"base"});
  Cavity cavity{"base", {length / 2, width / 2, height / 2}};
  cavity.low = {0, 0, 0};
  cavity.high = {length, width, height};
  return {{"box", net.take(), cavity}};
}

Style makeBlankSheet() {
  const Limit smallest = greatest(mm(16), calipers(20));
  return {
      .id = "blank-sheet",
      .title = worded("styles", "Blank sheet"),
      .summary =
          worded("styles",
                 "A base to start from: hinge walls and flaps to its edges, and make a style "
                 "of your own."),
      .traits = {.showsProduct = true,
                 .difficulty = 3,
                 .suits = worded("styles", "Whatever no other style is made for.")},
      .parameters = {measure("length", worded("styles", "Length"),
                             worded("styles", "Of the base, along its front edge."))
                         .standard(mm(80))
                         .from(smallest)
                         .to(kLargestSide),
                     measure("width", worded("styles", "Width"),
                             worded("styles", "Of the base, from its front edge to its back edge."))
                         .standard(mm(60))
                         .from(smallest)
                         .to(kLargestSide),
                     measure("height", worded("styles", "Height"),
                             worded("styles", "For walls: write height as the depth of a flap."))
                         .standard(mm(30))
                         .from(mm(3))
                         .to(mm(500))},
      // Half a caliper at either wall, and a flap glued inside each of two; above, a lid and what
      // tucks under it.
      .needs = holding({"length", 3}, {"width", 3}, {"height", 3}),
      .build = buildSheet,
  };
}

}  // namespace

const Style& blankSheet() {
  static const Style kSheet = makeBlankSheet();
  return kSheet;
}

}  // namespace creasewright
