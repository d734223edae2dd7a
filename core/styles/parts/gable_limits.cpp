#include "styles/parts/gable_limits.h"

#include <algorithm>

#include "styles/parameter_rows.h"

namespace creasewright {

std::vector<ParameterSpec> gableParameters() {
  const Length gap = mm(3);
  const Limit leastWidth = greatest(mm(20), plus(smallestFlap(), gap));
  return {
      measure("length", worded("styles", "Length"),
              worded("styles", "Of front and back; at least the width, or the corners would meet."))
          .standard(mm(110))
          .from(otherPlus("width"))
          .to(kLargestSide),
      measure("width", worded("styles", "Width"), worded("styles", "Of the sides that fold in."))
          .standard(mm(70))
          .from(leastWidth)
          .to(kLargestSide),
      measure("height", worded("styles", "Height"),
              worded("styles", "From the bottom to the roof. The bottom's glue tab must fit."))
          .standard(mm(80))
          .from(greatest(mm(15), calipers(25)))
          .to(kLargestSide),
      measure("roof", worded("styles", "Roof"),
              worded("styles",
                     "From wall to ridge; half the width would lie flat, the whole is steep."))
          .standard(mm(50))
          .from([](const Parameters& p, const Workbench&) {
            return p.length("width").nm() * 11 / 20;
          })
          .to(otherPlus("width")),
      measure("seam", worded("styles", "Glue seam"),
              worded("styles", "Joins the left side to the front."))
          .standard(mm(12))
          .from(smallestFlap())
          .to(otherPlus("length", -gap))
          .givesWay()};
}

std::vector<Need> gableNeeds(const Room& room, const Parameters&, const Workbench& bench) {
  const Length t = bench.caliper;
  const Length width = room.eased(Axis::Width) + t * 3;
  return {{"width", Axis::Width, width},
          {"length", Axis::Length,
           std::max(room.eased(Axis::Length) + t * 2, bench.grid.roundUp(width))},
          // Floor, and under the roof a corner on its seam.
          {"height", Axis::Height, room.eased(Axis::Height) + t * 4}};
}

Cavity insideUnderRoof(const FourWalls& w) {
  return {"front", {w.length / 2, w.height / 2, w.width / 2}, {0, 2, 1}};
}

}  // namespace creasewright
