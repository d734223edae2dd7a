#pragma once

#include "base/result.h"
#include "geometry/polygon.h"
#include "pages/page_setup.h"

namespace creasewright {

/// Room in mm that a page keeps for what is not the net.
struct PageReserve {
  double left = 0;  ///< the upright check bars
  double head = 0;
  double foot = 0;  ///< the lying check bars, hints and legend
};

inline constexpr double kHeadRoom = 13;  ///< mm: title, details, how the sheet is used
inline constexpr double kBarRoom = 12;   ///< mm: two check bars beside one another

/// How a page of `width` x `height` mm is divided: head on top, check bars at the left, foot, and
/// the cell for the net between them.
struct PageFrame {
  double width = 0;
  double height = 0;
  Bounds printable;
  Bounds cell;
};

/// Frame of a page lying upright or sideways.
PageFrame pageFrame(const PageSetup& setup, bool sideways, const PageReserve& reserve);

/// Error: MarginTooLarge when the margins leave less than 60 mm on either side.
Result<PageSetup> checkedSetup(const PageSetup& setup);

}  // namespace creasewright
