#include "styles/parts/pocket.h"

#include <algorithm>
#include <string>

#include "styles/limits.h"
#include "styles/parts/thumb_notch.h"

namespace creasewright {
namespace {

/// `edge` of the pocket, whose frame has x to the left of the back.
void addSide(NetBuilder& net, const Pocket& p, std::string_view edge, const std::string& name,
             int stage) {
  const std::string pocket = "back/bottom/pocket";
  const std::string side = pocket + '/' + name;
  const double taper = std::min(p.tab * 0.27, p.height / 4);
  net.hinge({pocket, edge}, side, rectangle(p.height, p.depth), {90, stage})
      .hinge({side, "outer"}, side + "/tab", trapezoid(p.height, p.tab, taper, taper), {90, stage})
      .mate(side + "/tab", "back", Face::Inside, Method::Glue, true);
}

}  // namespace

void addPocket(NetBuilder& net, const Pocket& p, int sideStage, int spineStage, int pocketStage) {
  Shape front = rectangle(p.width, p.height);
  if (p.notch > 0) front = withThumbNotch(front, "outer", p.notch);
  net.hinge({"back", "bottom"}, "back/bottom", rectangle(p.width, p.depth), {90, spineStage})
      .hinge({"back/bottom", "outer"}, "back/bottom/pocket", front, {90, pocketStage})
      .showing({"back/bottom/pocket"});
  addSide(net, p, "left", "right-side", sideStage);
  addSide(net, p, "right", "left-side", sideStage);
  net.open({"back/bottom", "left"}, {"back/bottom/pocket/right-side", "left"}, "held-beside")
      .open({"back/bottom", "right"}, {"back/bottom/pocket/left-side", "right"}, "held-beside");
}

Cavity insideOf(const Pocket& p, double height) {
  Cavity cavity{"back", {p.width / 2, height / 2, p.depth / 2}, {1, 0, 2}};
  cavity.high.y = height;
  return cavity;
}

std::vector<ParameterSpec> pocketParameters() {
  const Length mm3 = Length::nanometres(3'000'000);
  const Limit shortest = times(3, greatest(smallestFlap(), fixed(Length::nanometres(8'000'000))));
  return {
      {"length", "Length", "Upright, along the longest side of what goes in.",
       ParameterKind::Length, Length::nanometres(95'000'000).nm(), shortest, fixed(kLargestSide)},
      {"width", "Width", "Across. Both glue tabs must fit side by side.", ParameterKind::Length,
       Length::nanometres(65'000'000).nm(),
       plus(times(2, smallestFlap()), Length::nanometres(10'000'000)), fixed(kLargestSide)},
      {"depth", "Depth", "Of the strips between the covers. Narrower ones cannot be scored.",
       ParameterKind::Length, Length::nanometres(6'000'000).nm(), fixed(mm3),
       fixed(Length::nanometres(300'000'000))},
      {"pocket", "Pocket", "How high the pocket is, at most three quarters of the length.",
       ParameterKind::Length, Length::nanometres(30'000'000).nm(),
       plus(greatest(smallestFlap(), fixed(Length::nanometres(8'000'000))), mm3),
       [](const Parameters& p, const Making&) { return p.length("length").nm() / 4 * 3; }},
      givesWay({"tab", "Glue tab", "Holds the pocket's sides on the back.", ParameterKind::Length,
                Length::nanometres(10'000'000).nm(), smallestFlap(),
                partOf("width", 2, Length::nanometres(2'000'000))})};
}

std::vector<Need> pocketNeeds(const Room& room, const Parameters&, const Making& making) {
  const Length t = making.caliper;
  return {{"length", Axis::Length, room.eased(Axis::Length) + t},
          {"width", Axis::Width, room.eased(Axis::Width) + t},
          {"depth", Axis::Height, room.eased(Axis::Height) + t * 3}};
}

}  // namespace creasewright
