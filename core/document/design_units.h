#pragma once

#include "document/design.h"

namespace creasewright {

/// Whether the design's tools are marked in inches: its measures are then told in fractions.
inline bool measuresInInches(const Design& design) {
  return !design.grid.isNone() && design.grid.step().nm() % Length::inches(1, 64).nm() == 0;
}

}  // namespace creasewright
