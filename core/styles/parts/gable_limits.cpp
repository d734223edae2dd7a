#include "styles/parts/gable_limits.h"

#include <algorithm>

#include "styles/limits.h"

namespace creasewright {

std::vector<ParameterSpec> gableParameters() {
  const Length gap = Length::nanometres(3'000'000);
  const Limit leastWidth =
      greatest(fixed(Length::nanometres(20'000'000)), plus(smallestFlap(), gap));
  return {
      {"length", "Length", "Of front and back; at least the width, or the corners would meet.",
       ParameterKind::Length, Length::nanometres(110'000'000).nm(), otherPlus("width"),
       fixed(kLargestSide)},
      {"width", "Width", "Of the sides that fold in.", ParameterKind::Length,
       Length::nanometres(70'000'000).nm(), leastWidth, fixed(kLargestSide)},
      {"height", "Height", "From the bottom to the roof. The bottom's glue tab must fit.",
       ParameterKind::Length, Length::nanometres(80'000'000).nm(),
       greatest(fixed(Length::nanometres(15'000'000)), calipers(25)), fixed(kLargestSide)},
      {"roof", "Roof", "From wall to ridge; half the width would lie flat, the whole is steep.",
       ParameterKind::Length, Length::nanometres(50'000'000).nm(),
       [](const Parameters& p, const Making&) { return p.length("width").nm() * 11 / 20; },
       otherPlus("width")},
      givesWay({"seam", "Glue seam", "Joins the left side to the front.", ParameterKind::Length,
                Length::nanometres(12'000'000).nm(), smallestFlap(), otherPlus("length", -gap)})};
}

std::vector<Need> gableNeeds(const Room& room, const Parameters&, const Making& making) {
  const Length t = making.caliper;
  const Length width = room.eased(Axis::Width) + t * 3;
  return {{"width", Axis::Width, width},
          {"length", Axis::Length,
           std::max(room.eased(Axis::Length) + t * 2, making.grid.roundUp(width))},
          // Floor, and under the roof a corner on its seam.
          {"height", Axis::Height, room.eased(Axis::Height) + t * 4}};
}

Cavity insideUnderRoof(const FourWalls& w) {
  return {"front", {w.length / 2, w.height / 2, w.width / 2}, {0, 2, 1}};
}

}  // namespace creasewright
