#pragma once

#include <optional>

#include "folding/surfaces/plate.h"

namespace creasewright {

struct Plane {
  Point3 normal;  ///< unit
  double offset = 0;
  [[nodiscard]] double height(Point3 p) const { return dot(normal, p) - offset; }
};

Plane planeOf(const Plate& plate);

enum class Where { Coplanar, Front, Back, Across };

/// Where a plate lies about a plane, with `tolerance` mm counted as on it.
Where classify(const Plate& plate, const Plane& plane, double tolerance);

struct SplitSheet {
  Plate front;
  Plate back;
};

/// Cuts a plate that lies across a plane; a part may come out empty when it is thinner than a
/// nanometre.
SplitSheet split(const Plate& plate, const Plane& plane);

}  // namespace creasewright
