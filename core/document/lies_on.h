#pragma once

#include <optional>

#include "document/build.h"

namespace creasewright {

/// What an extra lies on, by its index: its host, or, of what lies on the box, the mats that are
/// glued on under most of it. Nothing for the box itself, and for what is not made.
std::optional<int> liesOn(const BuiltDesign& built, int extra);

}  // namespace creasewright
