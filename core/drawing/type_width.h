#pragma once

#include <string>

namespace creasewright {

/// Width in mm of one line of `words` (UTF-8) set in DejaVu Sans at `height` mm: never less than
/// the painter needs. A character that our texts do not use counts 1.05 of the type size.
double typeWidth(const std::string& words, double height, bool bold = false);

}  // namespace creasewright
