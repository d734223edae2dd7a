#include "styles/reverse_tuck_box.h"

#include "styles/parts/thumb_notch.h"
#include "styles/parts/two_lids.h"

namespace creasewright {
namespace {

/// The top lid on the back, the bottom lid on the front: side by side on a sheet such nets lie
/// closer together than straight tucks, and the raw edges of the lids point away from one another.
std::vector<Piece> buildBox(const Parameters& parameters, const Workbench& bench) {
  const TuckBox b(parameters, bench);
  Shape front = frontWall(b);
  Shape back = backWall(b);
  if (parameters.flag("thumb-notch")) {
    front = withThumbNotch(front, "top", b.notchRadius());
    back = withThumbNotch(back, backEdge(BoxEnd::Bottom), b.notchRadius());
  }
  return boxWithTwoLids(b, front, back, LidOn::Front);
}

}  // namespace

Style reverseTuckBox() {
  std::vector<ParameterSpec> parameters = tuckBoxParameters();
  parameters.push_back(thumbNotchParameter(worded(
      "styles", "Half-round notches for opening the lids, one in the front and one in the back.")));
  return {
      .id = "reverse-tuck-box",
      .title = worded("styles", "Reverse tuck box"),
      .summary =
          worded("styles",
                 "Four walls with a glued seam; the top tucks in at the front, the bottom behind."),
      .traits = {.difficulty = 1,
                 .suits =
                     worded("styles", "Light things that stand: tubes, lip balm, tea-lights.")},
      .words = tuckEndWords(),
      .parameters = std::move(parameters),
      .needs = tuckBoxNeeds(2),  // one inside the front and one inside the back
      .build = buildBox,
  };
}

}  // namespace creasewright
