#pragma once

#include <optional>

#include "folding/sheet.h"

namespace creasewright {

struct Plane {
  Point3 normal;  ///< unit
  double offset = 0;
  [[nodiscard]] double height(Point3 p) const { return dot(normal, p) - offset; }
};

Plane planeOf(const Sheet& sheet);

enum class Where { Coplanar, Front, Back, Across };

/// Where a sheet lies about a plane, with `tolerance` mm counted as on it.
Where classify(const Sheet& sheet, const Plane& plane, double tolerance);

struct SplitSheet {
  Sheet front;
  Sheet back;
};

/// Cuts a sheet that lies across a plane; a part may come out empty when it is thinner than a
/// nanometre.
SplitSheet split(const Sheet& sheet, const Plane& plane);

}  // namespace creasewright
