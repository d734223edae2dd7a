#pragma once

#include "units/paper.h"

namespace creasewright {

enum class Orientation { Auto, Upright, Sideways };

/// Factors that make up for what a printer draws too short or too long, on the sheet as it lies
/// upright (pages/print_correction.h).
struct PrintCorrection {
  double across = 1;
  double down = 1;

  bool operator==(const PrintCorrection&) const = default;
};

/// What the user's printer does with paper.
struct PageSetup {
  Paper paper;
  double margin = 5;    ///< mm; a laser printer leaves about 4 mm on every side unprinted
  double overlap = 10;  ///< mm that neighbouring tiles share
  Orientation orientation = Orientation::Auto;
  PrintCorrection correction = {};
};

}  // namespace creasewright
