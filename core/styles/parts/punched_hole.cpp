#include "styles/parts/punched_hole.h"

namespace creasewright {

Polygon punchedHole(Point centre, double diameter) {
  return arc(centre + Point{diameter / 2, 0}, centre, -360);
}

}  // namespace creasewright
