#include "styles/library.h"
#include "styles/parts/thumb_notch.h"
#include "styles/parts/tuck_box.h"

namespace creasewright {
namespace {

enum Stage { BackAndSeam = 1, Walls, BottomDust, BottomTuck, BottomLid, TopDust, TopTuck, TopLid };

/// The top lid on the back, the bottom lid on the front: side by side on a sheet such nets lie
/// closer together than straight tucks, and the raw edges of the lids point away from one another.
std::vector<Piece> buildBox(const Parameters& parameters, const Making& making) {
  const TuckBox b(parameters, making);
  Shape front = frontWall(b);
  Shape back = backWall(b);
  if (parameters.flag("thumb-notch")) {
    front = withThumbNotch(front, "top", b.notchRadius());
    back = withThumbNotch(back, backEdge(BoxEnd::Bottom), b.notchRadius());
  }
  NetBuilder net({"back-and-seam", "walls", "bottom-dust-flaps", "bottom-tuck", "bottom-lid",
                  "top-dust-flaps", "top-tuck", "top-lid"});
  addWalls(net, b, front, back, Walls);
  addTuckEnd(net, b, {BoxEnd::Bottom, LidOn::Front, BottomDust, BottomTuck, BottomLid});
  addTuckEnd(net, b, {BoxEnd::Top, LidOn::Back, TopDust, TopTuck, TopLid});
  return {{"box", net.take(), insideOf(b)}};
}

/// As in a straight tuck box; on the width a tuck flap lies inside the front and one inside the
/// back.
std::vector<Need> boxNeeds(const Room& room, const Parameters&, const Making& making) {
  return {{"length", Axis::Length, room.eased(Axis::Length) + making.caliper * 2},
          {"width", Axis::Width, room.eased(Axis::Width) + making.caliper * 3},
          {"height", Axis::Height, room.eased(Axis::Height) + making.caliper * 3}};
}

}  // namespace

Style reverseTuckBox() {
  std::vector<ParameterSpec> parameters = tuckBoxParameters();
  parameters.push_back(thumbNotchParameter(
      "Half-round notches for opening the lids, one in the front and one in the back."));
  return {
      .id = "reverse-tuck-box",
      .title = "Reverse tuck box",
      .summary = "Four walls with a glued seam; the top tucks in at the front, the bottom behind.",
      .traits = {.difficulty = 1, .suits = "Light things that stand: tubes, lip balm, tea-lights."},
      .parameters = std::move(parameters),
      .needs = boxNeeds,
      .build = buildBox,
  };
}

}  // namespace creasewright
