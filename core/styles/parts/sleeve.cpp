#include "styles/parts/sleeve.h"

#include <algorithm>
#include <cmath>

#include "styles/parts/thumb_notch.h"

namespace creasewright {

void addSleeve(NetBuilder& net, const Sleeve& s, int stage) {
  const int backStage = stage - 1;
  const double taper = std::min(s.seam * std::tan(Angle::degrees(15).radians()), s.length / 4);
  Shape front = rectangle(s.width, s.length);
  front.edges = {"near", "right", "far", "left"};
  Shape back = rectangle(s.length, s.width);
  if (s.notch > 0) {
    front = withThumbNotch(front, "near", s.notch);
    // Frames right of the front have x down: their right edge lies at the near end.
    back = withThumbNotch(back, "right", s.notch);
  }
  net.root("front", front)
      .hinge({"front", "right"}, "front/right", rectangle(s.length, s.depth), {90, stage})
      .hinge({"front/right", "outer"}, "front/right/back", back, {90, backStage})
      .hinge({"front/right/back", "outer"}, "front/right/back/left", rectangle(s.length, s.depth),
             {90, backStage})
      .hinge({"front/right/back/left", "outer"}, "front/right/back/left/seam",
             trapezoid(s.length, s.seam, taper, taper), {90, backStage})
      .mate("front/right/back/left/seam", "front", Face::Inside, Method::Glue, true)
      .showing({"front", "front/right", "front/right/back", "front/right/back/left"});
}

Cavity insideOf(const Sleeve& s) {
  Cavity cavity{"front", {s.width / 2, s.length / 2, s.depth / 2}, {1, 0, 2}};
  cavity.low.y = 0;
  cavity.high.y = s.length;
  return cavity;
}

}  // namespace creasewright
