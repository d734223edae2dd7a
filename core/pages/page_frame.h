#pragma once

#include "base/result.h"
#include "geometry/polygon.h"
#include "pages/page_setup.h"

namespace creasewright {

/// How a page of `width` x `height` mm is divided: header on top, check bars at the left, legend,
/// check bars and map at the foot, and the cell for the net between them.
struct PageFrame {
  double width = 0;
  double height = 0;
  Bounds printable;
  Bounds header;
  Bounds left;
  Bounds foot;
  Bounds cell;
};

/// Frame of a page lying upright or sideways whose foot is `footHeight` mm high.
PageFrame pageFrame(const PageSetup& setup, bool sideways, double footHeight);

/// Error: MarginTooLarge when the margins leave less than 60 mm on either side.
Result<PageSetup> checkedSetup(const PageSetup& setup);

}  // namespace creasewright
