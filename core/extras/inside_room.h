#pragma once

#include <optional>

#include "extras/host.h"

namespace creasewright {

/// What is laid or set into a box is so much smaller than it is inside, mm (common practice, no
/// published source).
inline constexpr double kClearInside = 1;

/// The free space that holds the product, or nothing.
std::optional<CavitySize> insideOf(const Host& host);

}  // namespace creasewright
