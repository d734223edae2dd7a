#pragma once

#include <string>
#include <vector>

#include "base/colour.h"
#include "units/length.h"
#include "units/millimetres.h"

namespace creasewright {

inline constexpr Length kSmallestPattern = mm(3);
inline constexpr Length kLargestPattern = mm(500);

/// A pattern as a paper is printed with it: small, and saved with the card.
struct PaperPattern {
  std::string id;               ///< of a Pattern
  Length scale;                 ///< the width of its repeat, from 3 mm to 500 mm
  int turn = 0;                 ///< degrees against the clock as one looks at the print, 0 to 359
  std::vector<Colour> colours;  ///< the ground first; those that are not told are the pattern's own
  bool operator==(const PaperPattern&) const = default;
};

}  // namespace creasewright
