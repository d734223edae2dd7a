#pragma once

#include "styles/style.h"

namespace creasewright {

/// Whether a tool measures in inches: its step is a whole number of 1/64 in.
bool measuresInches(const ToolGrid& grid);

/// How much larger inside a lid is than its tray outside, both sides together: 0.5 mm snug, 1.0
/// easy, 1.6 loose, 1/16 in on an inch grid (common practice, no published source).
Length lidEase(const Room& room, const Making& making);

/// A drawer in its sleeve: 1/16 in on the width, both sides together (common practice, no published
/// source).
inline constexpr Length kSleeveEase = Length::inches(1, 16);

}  // namespace creasewright
