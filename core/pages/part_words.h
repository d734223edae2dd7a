#pragma once

#include "pages/page_canvas.h"
#include "pages/part_sheet.h"

namespace creasewright {

/// A part (turned as it lies) on a page: its plane is moved by `shift`, and `box` is what of its
/// blank lies there.
struct PartOnPage {
  const PartSheet* sheet = nullptr;
  Point shift;
  Bounds box;
};

/// Score settings where their lines meet the edges, outside the blank where that is free, else
/// inside beside the line; none is left out but for want of any room. What is outside `own` (in the
/// part's plane) belongs to another tile.
void putEdgeReadings(PageCanvas& canvas, const PartOnPage& part, const Bounds& own,
                     const Wording& wording);

/// Names of panels in their panels, where they have room.
void putPanelNames(PageCanvas& canvas, const PartOnPage& part, const Wording& wording);

/// What a part says about itself.
struct PartLabel {
  std::string name;                ///< and how often it is made
  std::vector<std::string> lines;  ///< which face is up, size, card
};

/// An arrow to the part's own top with the words beside it: above or below the part, beside it, or
/// in it. False: no room.
bool putPartLabel(PageCanvas& canvas, const PartOnPage& part, const PartLabel& label);

}  // namespace creasewright
