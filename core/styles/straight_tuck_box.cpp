#include "styles/library.h"
#include "styles/parts/thumb_notch.h"
#include "styles/parts/tuck_box.h"

namespace creasewright {
namespace {

enum Stage { BackAndSeam = 1, Walls, BottomDust, BottomTuck, BottomLid, TopDust, TopTuck, TopLid };

/// Both lids on the back, both notches in the front.
std::vector<Piece> buildBox(const Parameters& parameters, const Making& making) {
  const TuckBox b(parameters, making);
  Shape front = frontWall(b);
  if (parameters.flag("thumb-notch"))
    front =
        withThumbNotch(withThumbNotch(front, "bottom", b.notchRadius()), "top", b.notchRadius());
  NetBuilder net({"back-and-seam", "walls", "bottom-dust-flaps", "bottom-tuck", "bottom-lid",
                  "top-dust-flaps", "top-tuck", "top-lid"});
  addWalls(net, b, front, backWall(b), Walls);
  addTuckEnd(net, b, {BoxEnd::Bottom, LidOn::Back, BottomDust, BottomTuck, BottomLid});
  addTuckEnd(net, b, {BoxEnd::Top, LidOn::Back, TopDust, TopTuck, TopLid});
  return {{"box", net.take(), insideOf(b)}};
}

/// Each wall takes half a caliper on either side, the seam and the tuck flaps one more, and at both
/// ends a dust flap lies under the lid.
std::vector<Need> boxNeeds(const Room& room, const Parameters&, const Making& making) {
  return {{"length", Axis::Length, room.eased(Axis::Length) + making.caliper * 2},
          {"width", Axis::Width, room.eased(Axis::Width) + making.caliper * 2},
          {"height", Axis::Height, room.eased(Axis::Height) + making.caliper * 3}};
}

}  // namespace

Style straightTuckBox() {
  std::vector<ParameterSpec> parameters = tuckBoxParameters();
  parameters.push_back(
      thumbNotchParameter("A half-round notch in the front for opening the lids."));
  return {
      .id = "straight-tuck-box",
      .title = "Straight tuck box",
      .summary = "Four walls with a glued seam; both lids tuck in at the front.",
      .traits = {.difficulty = 1, .suits = "Tubes, bottles, lip balm, soap, anything upright."},
      .parameters = std::move(parameters),
      .needs = boxNeeds,
      .build = buildBox,
  };
}

}  // namespace creasewright
