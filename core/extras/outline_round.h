#pragma once

#include "extras/host.h"

namespace creasewright {

/// The convex outline of all that lies under a strip `width` mm wide about the middle of the box,
/// square to an axis: its pieces, what goes round them and what stands out from them. About the
/// middle, along the two axes after it; mm, counter-clockwise as they count.
Polygon outlineRound(const Host& host, const OutsideBox& box, std::size_t axis, double width);

}  // namespace creasewright
