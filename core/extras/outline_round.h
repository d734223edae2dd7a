#pragma once

#include <span>
#include <vector>

#include "extras/host.h"

namespace creasewright {

/// The convex outline of all that lies under a strip `width` mm wide about the middle of the box,
/// square to an axis: its pieces, what goes round them and what stands out from them. About the
/// middle, along the two axes after it; mm, counter-clockwise as they count. `more` are outlines in
/// space that it goes over as well.
Polygon outlineRound(const Host& host, const OutsideBox& box, std::size_t axis, double width,
                     std::span<const std::vector<Point3>> more = {});

}  // namespace creasewright
