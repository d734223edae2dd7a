#pragma once

#include <string>
#include <vector>

#include "lettering/typeface.h"

namespace creasewright {

/// Width in mm of one line of `words` (UTF-8) set in DejaVu Sans at `height` mm: never less than
/// the painter needs. A character that our texts do not use counts 1.05 of the type size.
double typeWidth(const std::string& words, double height, bool bold = false);

/// The same in one of the faces: DejaVu Serif, its italic and DejaVu Sans Mono. A hand takes no
/// more than slanted words: painters set it closer where it is wider.
double typeWidth(const std::string& words, double height, Typeface face);

/// What stands in one place: a character with the accents that follow it.
struct Letter {
  std::string words;  ///< UTF-8
  double width = 0;   ///< mm
  double closer = 0;  ///< mm that it moves towards the letter before it (kerning), 0 or less
};

/// The letters of a line in the order in which they are read.
std::vector<Letter> lettersOf(const std::string& words, double height, Typeface face);

}  // namespace creasewright
