#pragma once

#include <cstddef>

#include "document/design.h"

namespace creasewright::bench {

/// How many changes by hand editedDesign() has.
inline constexpr std::size_t kEdits = 20;

/// The style of the most panels with twenty changes by hand that can all be made: holes, slits and
/// openings by turns, on whichever panels take them. Ends the run where they cannot.
Design editedDesign();

}  // namespace creasewright::bench
