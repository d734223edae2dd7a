#pragma once

#include <optional>

#include "edits/kinds/edit_kind.h"

namespace creasewright {

/// A flap of such measures (mm) on its fold from (0, 0) to (width, 0), with edges `inner`, `right`,
/// `outer` and `left`.
struct FlapMeasures {
  double depth = 0;
  double taper = 0;   ///< how much shorter it becomes at either end
  double radius = 0;  ///< of its outer corners
};

/// Nothing where it cannot be.
std::optional<Panel> flapShape(const FlapMeasures& m, double width);

}  // namespace creasewright
