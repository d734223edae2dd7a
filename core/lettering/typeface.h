#pragma once

#include <vector>

#include "base/worded.h"

namespace creasewright {

/// What words are set in, in the order of `typefaceWords`, which files count by: new ones come
/// last.
enum class Typeface {
  Plain,  ///< without serifs
  Serif,
  Typewriter,  ///< every letter as wide as the others
  Slanted,
  Hand  ///< like handwriting, as the machine has one; else slanted
};

std::vector<Worded> typefaceWords();

inline constexpr double kPoint = 25.4 / 72;  // mm

}  // namespace creasewright
