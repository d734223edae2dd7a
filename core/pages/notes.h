#pragma once

#include <string>
#include <vector>

#include "drawing/drawing.h"

namespace creasewright {

/// One line of running text.
struct NoteLine {
  std::string words;
  double height = 3.4;  ///< type size in mm
  double indent = 0;
  double before = 0;  ///< extra room above, dropped at the top of a page
};

/// Sets lines below one another into `area`, page by page; long ones are broken. Each drawing holds
/// texts in page coordinates; its width and height are not set.
std::vector<Drawing> setNotes(const std::vector<NoteLine>& lines, const Bounds& area);

}  // namespace creasewright
