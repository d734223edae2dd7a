#include "styles/straight_tuck_box.h"

#include "styles/parts/thumb_notch.h"
#include "styles/parts/two_lids.h"

namespace creasewright {
namespace {

/// Both lids on the back, both notches in the front.
std::vector<Piece> buildBox(const Parameters& parameters, const Workbench& bench) {
  const TuckBox b(parameters, bench);
  Shape front = frontWall(b);
  if (parameters.flag("thumb-notch"))
    front =
        withThumbNotch(withThumbNotch(front, "bottom", b.notchRadius()), "top", b.notchRadius());
  return boxWithTwoLids(b, front, backWall(b), LidOn::Back);
}

}  // namespace

Style straightTuckBox() {
  std::vector<ParameterSpec> parameters = tuckBoxParameters();
  parameters.push_back(thumbNotchParameter(
      worded("styles", "A half-round notch in the front for opening the lids.")));
  return {
      .id = "straight-tuck-box",
      .title = worded("styles", "Straight tuck box"),
      .summary = worded("styles", "Four walls with a glued seam; both lids tuck in at the front."),
      .traits = {.difficulty = 1,
                 .suits = worded("styles", "Tubes, bottles, lip balm, soap, anything upright.")},
      .words = tuckEndWords(),
      .parameters = std::move(parameters),
      .needs = tuckBoxNeeds(),
      .build = buildBox,
  };
}

}  // namespace creasewright
