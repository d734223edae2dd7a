#pragma once

#include "units/paper.h"

namespace creasewright {

enum class Orientation { Auto, Upright, Sideways };

/// What the user's printer does with paper.
struct PageSetup {
  Paper paper;
  double margin = 5;    ///< mm; a laser printer leaves about 4 mm on every side unprinted
  double overlap = 10;  ///< mm that neighbouring tiles share
  Orientation orientation = Orientation::Auto;
};

}  // namespace creasewright
